package picture

import (
	"cmp"
	"slices"
)

// span is a stretch of a picture: where it starts and how wide it is.
type span struct{ x, w int }

// end is where the span stops.
func (s span) end() int { return s.x + s.w }

// middle is the unit in the middle of the span.
func (s span) middle() int { return s.x + s.w/2 }

// share lays numbers side by side in width units, in proportion, but none
// narrower than least. The spans fill the width exactly. Each is less than a
// unit from its true share, and a bigger number never has the narrower span:
// the units that dividing leaves go to the numbers that lost most by it, the
// method of largest remainders. Numbers that are all zero share equally. It
// needs width >= least * len(numbers).
func share(start, width, least int, numbers ...int) []span {
	if slices.Max(numbers) == 0 {
		numbers = equal(len(numbers))
	}
	small := tooSmall(width, least, numbers)
	room, wide := wideOnes(width, least, numbers, small)
	spans := make([]span, len(numbers))
	left := room
	var cut []int // spans that lost a part of a unit
	for i, n := range numbers {
		if small[i] {
			spans[i].w = least
			continue
		}
		spans[i].w = n * room / wide
		left -= spans[i].w
		cut = append(cut, i)
	}
	slices.SortStableFunc(cut, func(i, j int) int { // who lost most comes first
		return cmp.Compare(numbers[j]*room%wide, numbers[i]*room%wide)
	})
	for _, i := range cut[:left] {
		spans[i].w++
	}
	for i := range spans {
		spans[i].x = start
		start = spans[i].end()
	}
	return spans
}

// wideOnes gives the room that the numbers share which are not too small, and
// their sum.
func wideOnes(width, least int, numbers []int, small []bool) (room, wide int) {
	room = width
	for i, n := range numbers {
		if small[i] {
			room -= least
		} else {
			wide += n
		}
	}
	return room, wide
}

// tooSmall marks the numbers whose part of the width would be under least.
// Giving those more takes from the others, so it looks again until none
// changes.
func tooSmall(width, least int, numbers []int) []bool {
	small := make([]bool, len(numbers))
	for changed := true; changed; {
		changed = false
		room, wide := wideOnes(width, least, numbers, small)
		for i, n := range numbers {
			if !small[i] && n*room < least*wide {
				small[i] = true
				changed = true
			}
		}
	}
	return small
}

// equal are as many equal numbers.
func equal(count int) []int {
	list := make([]int, count)
	for i := range list {
		list[i] = 1
	}
	return list
}
