package page

import "homebuild/internal/problem"

// slot is a place of an equation to be written.
type slot uint8

const (
	numberSlot slot = iota // a box
	signSlot               // a circle, for + or −: which one the child decides
	equalsSlot             // the sign is given
)

// equationSlots are the places of an equation, the same for every + and −.
func equationSlots(q problem.Equation) []slot {
	var out []slot
	for i, side := range q.Sides() {
		if i > 0 {
			out = append(out, equalsSlot)
		}
		for j := range side {
			if j > 0 {
				out = append(out, signSlot)
			}
			out = append(out, numberSlot)
		}
	}
	return out
}
