package page

// WeekCheck is any two numbers of a week, for numbers larger than Check knows.
type WeekCheck struct {
	WeekPage
	*WeekPairs
	Small string // link to the CheckIndex
}

// WeekPairs are all pairs of the numbers of a week.
type WeekPairs struct {
	Numbers []int // in order
	Pairs   []WeekPair

	outlines outlines
}

// WeekPair is what two numbers of a week make, put together or taken away.
type WeekPair struct {
	First, Second int // the bigger one first
	Results       []CheckResult
}

// PairID names the reply to two numbers in either order.
func PairID(a, b int) string { return id("pair-", max(a, b), "-", min(a, b)) }

// others are the week's numbers without one.
func (v *WeekPairs) others(n int) []int {
	var out []int
	for _, m := range v.Numbers {
		if m != n {
			out = append(out, m)
		}
	}
	return out
}
