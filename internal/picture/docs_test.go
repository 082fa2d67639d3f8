package picture

import (
	"flag"
	"fmt"
	"strings"
	"testing"

	"homebuild/internal/documented"
	"homebuild/internal/problem"
)

var _ = flag.Bool("update", false, "write the golden files and the table of docs/mathematics.md again")

const mathematics = "../../docs/mathematics.md"

// TestDocumented holds the table of pictures in docs/mathematics.md against what
// is drawn.
func TestDocumented(t *testing.T) {
	documented.Hold(t, mathematics, "pictures", table(t))
}

// table says for each kind of story, in numbers to 20, how it is drawn in a week
// of each picture.
func table(t *testing.T) string {
	t.Helper()
	var b strings.Builder
	b.WriteString("| story |")
	for _, kind := range Kinds() {
		fmt.Fprintf(&b, " %v |", kind)
	}
	b.WriteString("\n|" + strings.Repeat(" --- |", len(Kinds())+1) + "\n")
	for _, k := range problem.Kinds() {
		p, err := problem.New(k, 13, 5)
		if err != nil {
			p, err = problem.New(k, 9, 4, 3)
		}
		if err != nil {
			p, err = problem.New(k, 5, 3, 4, 2)
		}
		if err != nil {
			t.Fatal(err)
		}
		fmt.Fprintf(&b, "| %v |", k)
		for _, kind := range Kinds() {
			fmt.Fprintf(&b, " %s |", drawnAs(t, p, kind))
		}
		b.WriteString("\n")
	}
	return b.String()
}

func drawnAs(t *testing.T, p problem.Problem, kind Kind) string {
	t.Helper()
	if !Fits(kind, p) {
		return "-"
	}
	pic, err := OfProblem(p, kind, Solved)
	if err != nil {
		t.Fatal(err)
	}
	if crossesOut(pic) {
		return pic.Figure().Class + ", crossed out"
	}
	return pic.Figure().Class
}
