package problem

// Places are a number's ones, tens and hundreds by their value: 345 is 5, 40
// and 300. A thousand is ten hundreds, so that three places are enough.
type Places [3]int

// The places of a number.
const (
	OnesPlace = iota
	TensPlace
	HundredsPlace
)

// PlacesOf takes a number apart.
func PlacesOf(n int) Places { return Places{n % 10, n / 10 % 10 * 10, n / 100 * 100} }

// Value is the number.
func (p Places) Value() int { return p[OnesPlace] + p[TensPlace] + p[HundredsPlace] }

// Plus adds place by place: 56 and 37 make 80 and 13.
func (p Places) Plus(q Places) Places {
	for place := range p {
		p[place] += q[place]
	}
	return p
}

// Minus takes away place by place; see Covers.
func (p Places) Minus(q Places) Places {
	for place := range p {
		p[place] -= q[place]
	}
	return p
}

// Covers reports whether each place of p has enough to take q from it.
func (p Places) Covers(q Places) bool {
	for place := range p {
		if p[place] < q[place] {
			return false
		}
	}
	return true
}

// Open trades one of the next higher place for ten of this one: 65 is 50 and
// 15 then. A hundred is opened for ones where there is no ten: 305 is 200, 90
// and 15.
func (p Places) Open(place int) Places {
	ten := [...]int{OnesPlace: 10, TensPlace: 100}[place]
	if place == OnesPlace && p[TensPlace] == 0 {
		p = p.Open(TensPlace)
	}
	p[place+1] -= ten
	p[place] += ten
	return p
}

// OpenedFor opens what p needs to have opened until it covers q, a number that
// is not larger.
func (p Places) OpenedFor(q Places) Places {
	for place := OnesPlace; place < HundredsPlace; place++ {
		if p[place] < q[place] {
			p = p.Open(place)
		}
	}
	return p
}

// Filled lists the places that are not zero, the largest first.
func (p Places) Filled() []int {
	var found []int
	for place := HundredsPlace; place >= OnesPlace; place-- {
		if p[place] > 0 {
			found = append(found, p[place])
		}
	}
	return found
}
