package activity

import (
	"testing"

	"homebuild/internal/picture"
)

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
		{1, 4, 0, false}, // the worked one alone is
		{5, 4, 1, false}, // her own story stands beside them
	} {
		r := Request{Stories: test.stories, Kept: make([]Kept, test.kept), Given: make([]Given, test.given)}
		if _, got := otherwiseKept(r); got != test.want {
			t.Errorf("%+v: got %v", test, got)
		}
	}
}

// A picture that shows every story of a week is no matter to tell.
func TestDrawn(t *testing.T) {
	for kind, want := range map[picture.Kind]int{picture.BarModel: 0, picture.TenFrame: 5, 0: 0} {
		w := Year([]Request{{Week: monday(0), Key: "puddle", Target: named(t, "compare-within-20"), Picture: kind, Stories: 4}})[0]
		got, told := undrawn(w)
		if told != (want > 0) || told && got.Count != want {
			t.Errorf("%v: told %v of %d stories, want %d", kind, told, got.Count, want)
		}
	}
}
