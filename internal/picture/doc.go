// Package picture holds the models of a story as data: bars, dots, frames,
// bonds, lines and base-ten drawings, in whole numbers. It does not draw:
// internal/draw does.
//
// A picture grows with its story. Each number in it is an [Amount], which
// knows whether it is not there yet, known, asked for, or found. Where a
// picture has parts in proportion to their numbers, this package lays them
// out, on a sheet [Width] units wide.
//
// # What the groups of a drawing say
//
// A drawing can be read again without measuring it: groups have classes that
// say what they are, and a number that can be read is the text inside its own
// group. A group without a text has its place drawn, and nothing is written
// there. The element itself has the class picture and one of these:
//
//	bar        a bar cut into parts: whole, part …
//	compare    two bars: longer, shorter, difference
//	stacked    two pictures, one below the other: groups bar or compare
//	dots       a simple drawing: whole, then part …, or heap and legend …
//	rows       two rows of dots: longer, shorter, difference
//	splits     every way to take a number apart: split …
//	frames     ten frames: whole, grid …, legend …
//	make-ten   frames before and after dots move: was, now, a path move
//	bond       a number bond: whole, part …
//	line       a number line: hop …; numbers without a group stand at its stops
//	blocks     hundreds, tens, ones: part …, whole, total
//	columns    numbers set out in columns: number …, total
//
// Groups:
//
//	whole, part         a number's shape and the number; parts in their order
//	longer, shorter     the bars or rows of a comparison
//	difference          the gap between them; in rows, its number alone
//	heap                all the dots of the whole
//	legend              a sample dot, and how many of its sort there are
//	split               a pair of parts, as dots and as a sum
//	was, now            two frames and the sum of their dots
//	hop                 an arch and how far it goes; in their order
//	number              a sign, a number, its places from the highest down
//	total               what the places or columns come to
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
//	arch                             a hop's way, and the head of its arrow
//	move                             dots' ways: a shaft and a head each
//	plate, found                     under a number; found under the answer
//	name, sign, small                a person's name; + or −; a smaller number
//	brace, axis, tick, solid         over parts; a line, its ticks, its stops
//	grid, thin                       a ten frame; lines in frames and columns
//	guide, stem, underline           lines that join or part numbers
package picture
