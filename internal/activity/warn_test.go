package activity

import "testing"

// A week whose stories are kept says so when it asks for another number of them.
func TestOtherwiseKept(t *testing.T) {
	for _, test := range []struct {
		kept, stories, given int
		want                 bool
	}{
		{5, 4, 0, false}, // the worked one and four to try
		{5, 6, 0, true},
		{5, 2, 0, true},
		{0, 4, 0, false}, // nothing is kept yet
		{5, 4, 1, false}, // her own story stands beside them
	} {
		r := Request{Stories: test.stories, Kept: make([]Kept, test.kept), Given: make([]Given, test.given)}
		if _, got := otherwiseKept(r); got != test.want {
			t.Errorf("%+v: got %v", test, got)
		}
	}
}
