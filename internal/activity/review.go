package activity

import "homebuild/internal/problem"

// skill is what a class has learned of a kind of story: to solve it with numbers
// of a range.
type skill struct {
	kind   problem.Kind
	within int
}

// practice is when a class last met a skill, and in how many weeks. Weeks count
// from 1.
type practice struct {
	target      Target // of the last week that was about it
	weeks, last int
}

// practice remembers that the week being planned has a story of a target's kind.
func (m *memory) practice(kind problem.Kind, t Target) {
	s := skill{kind, t.Within}
	known, ok := m.skills[s]
	if !ok {
		m.learned = append(m.learned, s)
	}
	if known.last != m.week {
		known.weeks++
	}
	m.skills[s] = practice{t, known.weeks, m.week}
}

// longestWait is after how many weeks a skill comes back at the latest.
const longestWait = 8

// due is the skill that should come back now: of those met long enough ago, the
// one that has waited longest beyond its time. The wait is two weeks, then four,
// then eight, and stays so (common practice, no published source).
func (m *memory) due() (skill, Target, bool) {
	var best skill
	longest := -1
	for _, s := range m.learned {
		known := m.skills[s]
		wait := longestWait
		if known.weeks < 3 {
			wait = 1 << known.weeks
		}
		if late := m.week - known.last - wait; late > longest {
			best, longest = s, late
		}
	}
	return best, m.skills[best].target, longest >= 0
}
