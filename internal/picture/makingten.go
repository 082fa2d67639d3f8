package picture

import (
	"homebuild/internal/phrase"
)

// makingTen is two ten frames before and after the first one is filled from
// the second: 8 and 6 become 10 and 4.
type makingTen struct {
	was, now   tray
	moves      []move
	big, small int
}

// move is a dot's way from one place to another.
type move struct{ from, to int }

// stackedAt has two frames, one above the other, with room for arrows.
func stackedAt(left int) tray {
	const gap = 24
	return tray{make([]cell, 20), []point{{left, margin}, {left, margin + 2*twoFrames + gap}}, twoFrames}
}

// MakeTen wants two numbers under ten that pass ten. The first one's dots have
// the first part's fill, whichever frame they lie in.
func MakeTen(first, second int) Picture {
	m := makingTen{
		was: stackedAt(margin), now: stackedAt(Width - margin - 5*twoFrames),
		big: max(first, second), small: min(first, second),
	}
	bigFill, smallFill := 1, 2
	if second > first {
		bigFill, smallFill = 2, 1
	}
	need := 10 - m.big
	m.was.put(0, m.big, cell{fill: bigFill})
	m.was.put(m.big, need, cell{smallFill, dashed})
	m.was.put(10, m.small, cell{fill: smallFill})
	m.now.put(0, m.big, cell{fill: bigFill})
	m.now.put(m.big, need, cell{smallFill, ringed})
	m.now.put(10, m.small-need, cell{fill: smallFill})
	// The dots right below the empty places move up where there are such dots.
	from := 10 + min(5, m.small) - need
	m.was.put(from, need, cell{smallFill, ringed})
	for i := range need {
		m.moves = append(m.moves, move{from + i, m.big + i})
	}
	return m
}

// Figure draws the frames before, an arrow for each dot that moves up into the
// first frame, and the frames after, each with its sum below.
func (m makingTen) Figure() Figure {
	bottom := m.was.bottom()
	return Figure{"make-ten", bottom + 40, func(d *Pen) {
		side := func(class string, t tray, a, b int) {
			d.group(class, func() {
				t.paint(d)
				d.text(t.corners[0].x+5*t.size/2, bottom+22, d.sum(a, b), "")
			})
		}
		side("was", m.was, m.big, m.small)
		side("now", m.now, 10, m.big+m.small-10)
		var ways path
		for _, way := range m.moves {
			from, to := m.was.middle(way.from), m.was.middle(way.to)
			from.y, to.y = from.y-twoFrames/2, to.y+twoFrames/2-4
			ways.move(from.x, from.y).by(to.x-from.x, to.y-from.y)
			ways.head(to.x, to.y, to.x-from.x, to.y-from.y)
		}
		d.path("move", &ways)
	}}
}

// Describe says what moves.
func (m makingTen) Describe() phrase.Line {
	return phrase.Say("picture.ten-frame.make-ten",
		phrase.Number("First", m.big), phrase.Number("Second", m.small),
		phrase.Number("Moved", len(m.moves)), phrase.Number("Rest", m.big+m.small-10))
}
