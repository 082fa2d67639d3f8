package page

import (
	"fmt"
	"strings"
)

// boxCounts are how many boxes of answers (see keypad) a style can tell apart: a
// page carries the least that is enough for its stories.
var boxCounts = []int{8, 12, 16, 20, 24, 32, 48}

// mostBoxes is the most that there is a style for.
const mostBoxes = 48

// answerCSS stands for the style that tells so many boxes apart.
func answerCSS(boxes int) string { return id("answers-", boxes) }

// answerStyle are the rules by which an answer finds its reply without a script.
// They are the same for every story. A reply shows when every place has its tile;
// then exactly one does:
//
//	.rN     every tile picked is of the box kN
//	.right  every tile is the right one (or, of two parts, of a box)
//	.small  the first tile that is not the right one is less
//	.large    in all other cases
//
// The number that was put together is counted by the tiles before each picked
// one: a hundred, ten or one for each.
func answerStyle(boxes int) string {
	all := func(class string) string { return ":not(:has(:checked:not(." + class + ")))" }
	var show, boxed []string
	for i := range boxes {
		boxed = append(boxed, all(fmt.Sprintf("k%d", i+1)))
		show = append(show, fmt.Sprintf(".pick:where(%s)~* .r%d", boxed[i], i+1))
	}
	const listed = ":not(:has(.over:checked))"
	small := listed + ":has(.h .l:checked)," +
		listed + ":not(:has(.h :checked:not(.e))):has(.t .l:checked)," +
		listed + ":not(:has(:is(.h,.t) :checked:not(.e))):has(.o .l:checked)"
	return "@media screen{@supports selector(:has(a)){" +
		".reply,.sheet{display:none}" +
		".pick:not(:has(:indeterminate,.none:checked))~* .sheet,.pick:has(.over:checked)~* .sheet," +
		strings.Join(show, ",") + ",.pick:where(" + small + ")~* .small,.pick:where(" + all("e") + ")~* .right,.story .large{display:block}" +
		".pick:where(" + strings.Join(boxed, ",") + ")~* :is(.large,.small)," +
		".pick:where(" + all("e") + "," + small + ")~* .large,.pick:where(" + all("e") + ")~* .again{display:none}" +
		".story{counter-reset:n m}" +
		".h>:has(~* :checked){counter-increment:n 100}.t>:has(~* :checked){counter-increment:n 10}" +
		":is(.o,.p)>:has(~* :checked){counter-increment:n}.q>:has(~* :checked){counter-increment:m}" +
		"}}"
}
