package story

import "homebuild/internal/problem"

// Choice is a story without its words: all that it takes to tell the same one
// again, whatever becomes of the site's key, of the weeks before it or of the
// rules of choosing.
type Choice struct {
	Event   string          // "harbour.board": the place and what happens there
	Problem problem.Problem // the kind and the numbers
	Extra   int             // a number that nobody needs; 0 for none
}
