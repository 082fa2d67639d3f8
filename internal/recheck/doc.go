// Package recheck reads a published folder as a stranger would, and works every
// number out again. It knows nothing of how the pages were made: it reads their
// HTML, counts the dots, solves the equations and follows the links. It shares
// no code with the rooms that made them, so that a mistake there is not
// repeated here.
//
// What a stranger can rely on in the pages:
//
//	bdi.eq                 an equation, a chain, or a sum without an end
//	section.story          a story to try: p.say tells it; .nums below .pick are
//	                       the places that an answer is picked from, and the
//	                       classes of the tiles say which .reply it gets
//	.model                 a story that is worked out on paper: p.say tells it,
//	                       p.big is its equation, .slip.say its answer
//	.known .extra .ask     what a sentence of the worked story does
//	b.n                    a number, alone or with what it counts; a word or a
//	                       dual may stand in its place
//	svg.picture            a picture, its sort in a second class, its text
//	                       alternative in its <title>; groups say what they
//	                       are (g.part, g.hop), and a number that can be read
//	                       stands in its own group
//	h3 … p.chain           an estimate: what it is near to, and from where to where
package recheck
