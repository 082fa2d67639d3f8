package page

import (
	"fmt"
	"strings"
)

// mostBoxes is how many boxes of answers (see keypad) the style knows.
const mostBoxes = 48

// answerStyle are the rules by which an answer finds its reply without a script.
// They are the same for every story. A reply shows when every place has its tile;
// then exactly one does:
//
//	.rN     every tile picked is of the box kN
//	.right  every tile is the right one (or, of two parts, of a box)
//	.small  the first tile that is not the right one is less
//	.big    in all other cases
//
// The number that was put together is counted by the tiles before each picked
// one: a hundred, ten or one for each.
func answerStyle() string {
	all := func(class string) string { return ":not(:has(.pick :checked:not(." + class + ")))" }
	const listed = ":not(:has(.more:checked))"
	small := []string{
		listed + ":has(.h .l:checked)",
		listed + ":not(:has(.h :checked:not(.e))):has(.t .l:checked)",
		listed + ":not(:has(:is(.h,.t) :checked:not(.e))):has(.o .l:checked)",
	}
	var show, boxes []string
	for i := range mostBoxes {
		boxes = append(boxes, all(fmt.Sprintf("k%d", i+1)))
		show = append(show, fmt.Sprintf(".story:where(%s) .r%d", boxes[i], i+1))
	}
	for _, s := range small {
		show = append(show, ".story:where("+s+") .small")
	}
	show = append(show, ".story:where("+all("e")+") .right", ".story .big")
	others := strings.Join(append(append([]string{all("e")}, small...), boxes...), ",")
	return "@media screen{@supports selector(:has(a)){" +
		".reply,.sheet{display:none}" +
		".story:not(:has(.pick :indeterminate,.none:checked)) .sheet,.story:has(.more:checked) .sheet," +
		strings.Join(show, ",") + "{display:block}" +
		".story:where(" + others + ") .big,.story:where(" + strings.Join(boxes, ",") + ") .small," +
		".story:where(" + all("e") + ") .again{display:none}" +
		".story{counter-reset:n m}" +
		".h>:has(~* :checked){counter-increment:n 100}.t>:has(~* :checked){counter-increment:n 10}" +
		":is(.o,.p)>:has(~* :checked){counter-increment:n}.q>:has(~* :checked){counter-increment:m}" +
		"}}"
}
