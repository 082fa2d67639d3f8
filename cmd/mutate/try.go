package main

import (
	"context"
	"os"
)

// outcome is what became of a change.
type outcome int

const (
	pending       outcome = iota // to be tried
	noticed                      // a test failed
	endless                      // the tests used all the time they may: noticed, too
	lived                        // all tests passed
	notCompilable                // what it makes is no Go: a text minus a text
	notTried                     // no switch can stand there: the length of an array
	notCovered                   // the coverage of Go says that no test runs the line
)

func (o outcome) String() string {
	return []string{"to be tried", "noticed", "endless", "lived", "not compilable", "not tried", "not covered"}[o]
}

// waiting are the changes that are still to be tried.
func waiting(changes []*change) (some []*change) {
	for _, c := range changes {
		if c.outcome == pending {
			some = append(some, c)
		}
	}
	return some
}

// try tries the changes of the package in a folder, one after the other. Each is told
// as soon as it is known what became of it.
func try(ctx context.Context, folder string, changes []*change, seconds int, tell func(*change)) error {
	temporary, err := os.MkdirTemp("", "mutate")
	if err != nil {
		return err
	}
	defer os.RemoveAll(temporary)
	tests := program{folder: folder, seconds: seconds}
	if len(waiting(changes)) > 0 { // a package of which nothing runs may have no tests
		if tests.file, err = prepare(ctx, temporary, folder, changes); err != nil {
			return err
		}
		if err := tests.prove(ctx); err != nil {
			return err
		}
	}
	for _, c := range changes {
		if c.outcome == pending {
			r, err := tests.run(ctx, c.number)
			if err != nil {
				return err
			}
			c.outcome = r.outcome
		}
		tell(c)
	}
	return nil
}

// prepare compiles the tests of a package with a switch for each change that waits to
// be tried, and returns the file of the program.
func prepare(ctx context.Context, temporary, folder string, changes []*change) (file string, err error) {
	code, err := load(ctx, folder)
	if err != nil {
		return "", err
	}
	changed, err := code.switchable(changes)
	if err != nil {
		return "", err
	}
	return build(ctx, temporary, folder, changed)
}
