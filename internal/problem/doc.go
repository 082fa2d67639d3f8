// Package problem is the ground floor of the mathematics: whole numbers, the
// facts they make, and the published table of addition and subtraction
// situations.
//
// A story problem has a situation (what happens), an unknown (what is asked)
// and two or three quantities. The table has four situations:
//
//	Add to        Lina has 8 shells. She finds 6 more. How many now?
//	Take from     Lina has 13 shells. She gives away 4. How many are left?
//	Put together  8 shells are in the basket, 6 in the box. How many in all?
//	Compare       Lina has 14 shells, Omar has 9. How many more has Lina?
//
// and in each of them any of the three quantities can be the one that is
// asked, which is what makes a problem easy or hard. A [Kind] is one cell of
// that table. Compare is told in two wordings ("more", "fewer"), so there are
// 12 subtypes and 15 kinds; beside them stand the sum of three addends and the
// two-step chains of grade 2.
//
// Source: Common Core State Standards for Mathematics (2010), Glossary,
// Table 1, p. 88.
//
// Values here cannot be wrong: a whole is computed from its parts, and an
// [Equation] whose sides differ cannot be made. Numbers are whole and never
// negative. This package knows no words.
package problem
