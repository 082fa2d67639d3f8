package draw_test

import (
	"fmt"
	"strings"

	"homebuild/internal/draw"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
)

// Lina has 8 shells. She finds some more. Now she has 14.
func ExampleDraw() {
	p, err := problem.New(problem.AddToChange, 8, 6)
	if err != nil {
		fmt.Println(err)
		return
	}
	bar, err := picture.OfProblem(p, picture.BarModel, picture.Open)
	if err != nil {
		fmt.Println(err)
		return
	}
	svg, err := draw.Draw(bar, draw.Options{
		ID:  "story-1-bar",
		Say: func(l phrase.Line) string { return l.ID }, // a page says it in its language
	})
	fmt.Println(strings.Count(svg, "<rect"), "rectangles,", strings.Count(svg, ">?<"), "question mark, error", err)
	// Output: 4 rectangles, 1 question mark, error <nil>
}
