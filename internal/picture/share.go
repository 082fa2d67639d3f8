package picture

// Span is a stretch of a picture: where it starts and how wide it is.
type Span struct{ X, W int }

// End is where the span stops.
func (s Span) End() int { return s.X + s.W }

// Middle is the unit in the middle of the span.
func (s Span) Middle() int { return s.X + s.W/2 }

// Share lays numbers side by side in width units, in proportion, but none
// narrower than least. Each width is divided once and the last wide one takes
// what the divisions leave, so that the spans fill the width exactly. Numbers
// that are all zero share equally. It needs width >= least * len(numbers).
func Share(start, width, least int, numbers ...int) []Span {
	if sum(numbers) == 0 {
		numbers = ones(len(numbers))
	}
	small := tooSmall(width, least, numbers)
	room, wide, last := width, 0, len(numbers)-1
	for i, n := range numbers {
		if small[i] {
			room -= least
		} else {
			wide += n
			last = i
		}
	}
	left := room
	spans := make([]Span, len(numbers))
	for i, n := range numbers {
		switch {
		case small[i]:
			spans[i].W = least
		case i != last:
			spans[i].W = n * room / wide
			left -= spans[i].W
		}
	}
	if len(numbers) > 0 {
		spans[last].W = left
	}
	for i := range spans {
		spans[i].X = start
		start = spans[i].End()
	}
	return spans
}

// tooSmall marks the numbers whose part of the width would be under least.
// Giving those more takes from the others, so it looks again until none
// changes.
func tooSmall(width, least int, numbers []int) []bool {
	small := make([]bool, len(numbers))
	for changed := true; changed; {
		changed = false
		room, wide := width, 0
		for i, n := range numbers {
			if small[i] {
				room -= least
			} else {
				wide += n
			}
		}
		for i, n := range numbers {
			if !small[i] && n*room < least*wide {
				small[i] = true
				changed = true
			}
		}
	}
	return small
}

func sum(numbers []int) int {
	total := 0
	for _, n := range numbers {
		total += n
	}
	return total
}

func ones(count int) []int {
	list := make([]int, count)
	for i := range list {
		list[i] = 1
	}
	return list
}
