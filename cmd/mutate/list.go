package main

import (
	"cmp"
	"context"
	"fmt"
	"go/token"
	"os"
	"os/exec"
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/pattern"
)

// tester is what chooses the changes, and knows which lines the tests run.
const tester = "github.com/go-gremlins/gremlins/cmd/gremlins@v0.6.0"

// place is where a change is: a file of the room, and the sign that is changed.
type place struct {
	file         string // from the folder of the room, with slashes
	line, column int
}

func (p place) String() string { return fmt.Sprintf("%s:%d:%d", p.file, p.line, p.column) }

// change is one sign of the code that becomes another.
type change struct {
	place
	number  int    // its switch, from 1
	kind    string // in the tester's words
	outcome outcome
	from    token.Token // the sign in the code, once it was found there
}

// to is the sign that the change puts in the place of the one in the code.
func (c *change) to() token.Token { return replaced[c.kind][c.from] }

func (c *change) String() string {
	if c.from == token.ILLEGAL {
		return fmt.Sprintf("%s: %s", c.place, c.kind)
	}
	return fmt.Sprintf("%s: %s to %s", c.place, c.from, c.to())
}

// replaced has the changes that the tester makes by default. Those that it calls
// INVERT_NEGATIVES are among them: each is one of ARITHMETIC_BASE again.
var replaced = map[string]map[token.Token]token.Token{
	"ARITHMETIC_BASE": {
		token.ADD: token.SUB, token.SUB: token.ADD, token.MUL: token.QUO, token.QUO: token.MUL, token.REM: token.MUL,
	},
	"CONDITIONALS_BOUNDARY": {
		token.LSS: token.LEQ, token.LEQ: token.LSS, token.GTR: token.GEQ, token.GEQ: token.GTR,
	},
	"CONDITIONALS_NEGATION": {
		token.EQL: token.NEQ, token.NEQ: token.EQL, token.LSS: token.GEQ, token.LEQ: token.GTR, token.GTR: token.LEQ, token.GEQ: token.LSS,
	},
	"INCREMENT_DECREMENT": {token.INC: token.DEC, token.DEC: token.INC},
}

// list asks the tester for the changes of a room and the rooms inside it.
func list(ctx context.Context, room string) ([]*change, error) {
	cmd := exec.CommandContext(ctx, "go", "run", tester, "unleash", "--dry-run", "--invert-negatives=false", "--workers", "1", "./"+room)
	cmd.Env = append(os.Environ(), "GOFLAGS=-short -vet=off", "GOGC=400", "NO_COLOR=1")
	report, err := cmd.CombinedOutput()
	if err != nil {
		return nil, fmt.Errorf("the changes of %s could not be listed; its tests must pass, and gremlins be within reach (go run %s): %w\n%s", room, tester, err, report)
	}
	changes, err := parse(string(report))
	if err == nil && len(changes) == 0 {
		err = fmt.Errorf("gremlins lists no changes of %s; is it a folder with code?\n%s", room, report)
	}
	return changes, err
}

var listed = pattern.Of(`(?m)^ *(RUNNABLE|NOT COVERED) (\w+) at (\S+):(\d+):(\d+)$`)

// parse reads what the tester lists, and numbers it in the order of the code.
func parse(report string) ([]*change, error) {
	var changes []*change
	for _, row := range listed().FindAllStringSubmatch(report, -1) {
		c := &change{kind: row[2], place: place{file: row[3]}}
		c.line, _ = strconv.Atoi(row[4]) // digits: see listed
		c.column, _ = strconv.Atoi(row[5])
		if row[1] == "NOT COVERED" {
			c.outcome = notCovered
		}
		if replaced[c.kind] == nil {
			return nil, fmt.Errorf("%s: gremlins lists a change of an unknown kind, %s: write it into replaced (cmd/mutate/list.go)", c.place, c.kind)
		}
		changes = append(changes, c)
	}
	slices.SortStableFunc(changes, func(a, b *change) int {
		return cmp.Or(strings.Compare(a.file, b.file), a.line-b.line, a.column-b.column, strings.Compare(a.kind, b.kind))
	})
	for i, c := range changes {
		c.number = i + 1
	}
	return changes, nil
}

// chosen are the changes of the given files or lines ("borrow.go", "borrow.go:31"); all
// of them where none is given.
func chosen(changes []*change, only []string) ([]*change, error) {
	if len(only) == 0 {
		return changes, nil
	}
	var some []*change
	met := map[string]bool{}
	for _, c := range changes {
		at := c.place.String() + ":"
		if i := slices.IndexFunc(only, func(part string) bool { return strings.HasPrefix(at, part+":") }); i >= 0 {
			some = append(some, c)
			met[only[i]] = true
		}
	}
	for _, part := range only {
		if !met[part] {
			return nil, fmt.Errorf("no change is listed at %q; name files of the room, or lines as file:line, each once", part)
		}
	}
	return some, nil
}
