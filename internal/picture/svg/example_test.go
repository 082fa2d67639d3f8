package svg_test

import (
	"fmt"
	"strconv"
	"strings"

	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/picture/svg"
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
	element := svg.Draw(bar, svg.Options{
		ID:     "story-1-bar",
		Say:    func(l phrase.Line) string { return l.ID }, // a page says it in its language
		Number: strconv.Itoa,
	})
	fmt.Println(strings.Count(element, "<rect"), "rectangles,", strings.Count(element, ">?<"), "question mark")
	// Output: 4 rectangles, 1 question mark
}
