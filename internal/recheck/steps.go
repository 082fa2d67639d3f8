package recheck

import "slices"

// stepFaults rechecks two steps in one bar: its parts lie side by side, and each
// brace joins parts that make its number. Everything is drawn to one scale.
func (f *figure) stepFaults() {
	parts := f.all("part")
	if len(parts) == 0 {
		parts = []group{{marks: f.marks, labels: f.one("whole").labels}}
	}
	lengths := f.sideBySide("steps", mark{}, parts)
	f.inScale(parts, lengths)
	cuts := []int{parts[0].stretch().x}
	for i, w := range lengths {
		cuts = append(cuts, cuts[i]+w)
	}
	again := f.all("under")
	if len(again) > 1 && len(parts) < 4 { // the whole is cut once more; four parts are joined in pairs
		f.cutAgain(again, parts)
		again = nil
	}
	for _, brace := range append(f.all("whole"), again...) {
		at := brace.stretch()
		first, end := slices.Index(cuts, at.x), slices.Index(cuts, at.x+at.w)
		if first < 0 || end <= first {
			f.fault("steps: a brace joins what are no parts")
			continue
		}
		f.makes(brace.amount(), parts[first:end])
	}
}

// makes wants parts to come to a number, as far as all are known.
func (f *figure) makes(whole amount, parts []group) {
	sum := 0
	for _, part := range parts {
		a := part.amount()
		if !a.known {
			return
		}
		sum += a.n
	}
	if whole.known && sum != whole.n {
		f.fault("steps: the parts make %d, not %d", sum, whole.n)
	}
}

// inScale wants lengths to be in proportion to their numbers, as far as these are
// known.
func (f *figure) inScale(parts []group, lengths []int) {
	var wide, numbers []int
	for i, part := range parts {
		if a := part.amount(); a.known {
			wide, numbers = append(wide, lengths[i]), append(numbers, a.n)
		}
	}
	if len(wide) > 1 {
		f.fair(readable, wide, numbers)
	}
}

// cutAgain wants braces below a bar to be as long as the whole bar, in the same
// scale, and to make the same number. A cut that would fall on that of the parts
// is moved aside by a few units.
func (f *figure) cutAgain(braces, parts []group) {
	const aside = 3
	along := mark{x: parts[0].stretch().x}
	for _, part := range parts {
		along.w += part.stretch().w
	}
	lengths := f.sideBySide("steps", along, braces)
	near := lengths[0] - parts[0].stretch().w
	if near < -aside || near > aside {
		f.inScale(braces, lengths)
	}
	a, b := braces[0].amount(), parts[0].amount()
	if a.known && b.known && (a.n-b.n)*near < 0 {
		f.fault("steps: %d is drawn longer than %d", min(a.n, b.n), max(a.n, b.n))
	}
	if sum := braces[0].amount().n + braces[1].amount().n; braces[0].amount().known && braces[1].amount().known {
		f.makes(amount{sum, true}, parts)
	}
}

func (f *figure) stepShows() (s shown) {
	if a := f.one("whole").amount(); a.known {
		s.wholes = []int{a.n}
	}
	return s
}

// bothFaults rechecks bars to compare, and what they come to.
func (f *figure) bothFaults() {
	f.barFaults()
	longer, shorter, both := f.one("longer").amount(), f.one("shorter").amount(), f.one("both").amount()
	if longer.known && shorter.known && both.known && longer.n+shorter.n != both.n {
		f.fault("compare: the two bars make %d, not %d", longer.n+shorter.n, both.n)
	}
}
