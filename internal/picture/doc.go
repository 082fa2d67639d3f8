// Package picture draws the models of a story: bars, dots, frames, bonds,
// lines and base-ten drawings. Each has one file: its numbers, its text
// alternative, its layout and its strokes, all in whole numbers.
//
// A picture grows with its story: each number in it is not there yet, known,
// asked for, or found. [OfProblem] shows a story by a kind of picture at a
// [Stage]; strategies show their working with the other constructors. A
// picture is drawn on a [Canvas] that is [Width] units wide, as wide as the
// narrowest screen; no text is smaller than 16 units. Pictures run from left
// to right in every language.
//
// # What the groups of a drawing say
//
// A drawing can be read again without measuring it: groups have classes that
// say what they are, and a number that can be read is the text inside its own
// group. A group without a text has its place drawn, and nothing is written
// there. The element itself has the class picture and one of these:
//
//	bar        a bar cut into parts: whole, part …
//	compare    two bars: longer, shorter, difference; both where it is asked
//	steps      two steps in one bar: whole, part …, under …
//	stacked    two bars of the same whole, one below the other: groups bar
//	dots       a simple drawing: whole, then part …, or heap and legend …
//	rows       two rows of dots: longer, shorter, difference
//	splits     every way to take a number apart: split …
//	frames     ten frames: whole, grid …, legend …
//	make-ten   frames before and after dots move: was, now, a path move
//	bond       a number bond: whole, part …
//	line       a number line: hop …; numbers without a group stand at its stops
//	blocks     hundreds, tens, ones: part …, whole, total; legend …
//	columns    numbers set out in columns: number …, total, traded
//
// Groups:
//
//	whole, part         a number's shape and the number; parts in their order
//	longer, shorter     the bars or rows of a comparison
//	difference          the gap between them; in rows, its number alone
//	both                what two bars come to, at a brace beside them
//	under               what a brace under the bar joins
//	heap                all the dots of the whole
//	legend              a sample dot, and how many of its sort there are
//	split               a pair of parts, as dots and as a sum
//	was, now            two frames and the sum of their dots
//	hop                 an arch and how far it goes; in their order
//	number              a sign, a number, its places from the highest down
//	total               what the places or columns come to
//	traded              the line before it, once one place was traded for another
//
// Shapes and texts:
//
//	part-0, part-a, part-b, part-c   the fill of the whole and of each part
//	unknown                          the place, or the dots, of what is not known
//	nothing                          a part of 0
//	cross                            dots crossed out, two strokes each
//	ring                             a second ring round dots drawn already
//	hundred, ten, one                what a block or a number of total counts
//	gone, strike                     blocks taken away: outlines, strokes
//	opened                           where a block was that became ten smaller ones
//	gap                              a shape round a "?" that is not the other "?"
//	arch                             a hop's way, and the head of its arrow
//	move                             ways of dots or of trades: a shaft, a head each
//	plate, found                     under a number; found under the answer
//	name, sign, small                a person's name; + or −; a smaller number
//	brace, axis, tick, solid         over parts; a line, its ticks, its stops
//	grid, thin                       a ten frame; lines in frames and columns
//	guide, stem, underline           lines that join or part numbers
package picture
