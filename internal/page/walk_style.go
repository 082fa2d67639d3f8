package page

import (
	"fmt"
	"strings"
)

// walkStyle are the rules by which the radio buttons of the path show one screen
// of the walk. On a page that was opened at a part (#show), as a link from another
// language does, the part shows until a button is pressed. The languages at the
// head lead to the part that shows.
func walkStyle() string {
	var shown []string
	for i := 1; i <= mostScreens; i++ {
		shown = append(shown, fmt.Sprintf("main:has(#w%d:checked) .s%[1]d", i))
	}
	var passed, menus []string
	for i, part := range walkParts {
		opened := "main:has(#w0:checked):has(#" + part + ":target) "
		leg := fmt.Sprintf(".leg:nth-of-type(%d)", i+1)
		passed = append(passed, opened+leg+" .name+label", opened+fmt.Sprintf(".leg:nth-of-type(-n+%d) label", i))
		menus = append(menus, "body:has("+leg+" :checked) .to-"+part, "body:has(#w0:checked):has(#"+part+":target) .to-"+part)
	}
	// In a week that is one file, a link may lead from the walk to another chapter.
	const walking = "body:has(.leg :checked,.step:target):not(:has(.chapter:not(.learn):target))"
	on := walking + " "
	return "@media screen{@supports selector(:has(a)){" +
		"main:has(.step) .step{display:none}" + // weightier than the style of the file, where a class scopes that
		strings.Join(shown, ",") + ",main:has(#w0:checked) .step:target{display:var(--step,flex);flex:1;padding-block-end:0}" +
		on + ":is(.intro,.foot,.start){display:none}" +
		walking + "," + on + "main," + on + ".walk{display:flex;flex-direction:column;flex:1}" +
		walking + "{min-block-size:100svh}" +
		on + "main{padding-block:.75rem 0}" +
		on + ":is(h1,.path legend,.path .name){position:absolute;inline-size:1px;block-size:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}" +
		on + ".path{display:flex;gap:.3rem;margin:0 0 .75rem}" +
		on + ".leg{flex:1;gap:2px;min-block-size:1.5rem;border:0}" +
		on + ".path label:not(.name){flex:1;block-size:.75rem;border-radius:0}" +
		on + ".path input{inset:-.75rem 0;block-size:auto}" +
		on + ".path :is(.leg:has(~.leg :checked) label,label:has(~label :checked),label:has(:checked))," + strings.Join(passed, ",") + "{background:var(--ink);forced-color-adjust:none}" +
		on + ".tabs:not([hidden]){display:none}" + strings.Join(menus, ",") + "{display:flex}" +
		"}}"
}
