package mistake

import (
	"slices"
	"strconv"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// openers is how many sentences take turns to begin a general reply.
const openers = 6

// opener is the sentence that begins the i-th general reply of the story.
func (r replying) opener(i int) phrase.Line {
	return phrase.Say("reply.opener." + strconv.Itoa((r.turn+i)%openers+1))
}

// general puts n with the reply of its sort, or begins that; of two steps, numbers on
// either side of the first result are asked for other steps.
func (r replying) general(all []Reply, n int) []Reply {
	sort := r.sortOf(n)
	i := slices.IndexFunc(all, func(reply Reply) bool {
		return reply.Sort == sort && r.firstIsOff(reply.Numbers[0]) == r.firstIsOff(n)
	})
	if i < 0 {
		i, all = len(all), append(all, Reply{Sort: sort, Lines: r.lines(sort, n)})
	}
	all[i].Numbers = append(all[i].Numbers, n)
	return all
}

// sortOf tells where a number lies of which nothing else is known.
func (r replying) sortOf(n int) Sort {
	switch {
	case r.beyond(n):
		return OutOfReach
	case r.close(n):
		return Close
	case n < r.asked():
		return TooSmall
	}
	return TooBig
}

// lines are the general reply of a sort, to a number that is of it.
func (r replying) lines(sort Sort, n int) []phrase.Line {
	switch sort {
	case OutOfReach:
		return []phrase.Line{r.opener(0), r.reach()}
	case Close:
		return append([]phrase.Line{phrase.Say("reply.close")}, r.next(n)...)
	case TooSmall:
		return append([]phrase.Line{r.opener(1), r.direction("small")}, r.next(n)...)
	}
	return append([]phrase.Line{r.opener(2), r.direction("big")}, r.next(n)...)
}

// close reports whether a number is near the answer: within 2 of numbers to 20, 5
// of numbers to 100, 10 of others. Common practice, no published source.
func (r replying) close(n int) bool {
	if n == 0 { // nothing is never close to something
		return false
	}
	near := 10
	switch problem.RangeOf(r.most) {
	case 10, 20:
		near = 2
	case 100:
		near = 5
	}
	if r.asked() < 10 {
		near = 2
	}
	return n >= r.asked()-near && n <= r.asked()+near
}

func (r replying) direction(way string) phrase.Line {
	if r.kind() == problem.TogetherBoth {
		return phrase.Say("reply.parts-too-"+way, phrase.Number("Total", r.calc.Value()))
	}
	return phrase.Say("reply.too-" + way)
}

// next is what to say to a child whose number n is of no known cause: of two steps,
// the one that went another way, or both in their turn; else the first hint of the
// week's way.
func (r replying) next(n int) []phrase.Line {
	if r.chain() && !r.firstIsOff(n) {
		return []phrase.Line{r.inTurn()}
	}
	return r.first()
}

// first is what to say first to a child who is stuck: of two steps, to take one;
// else the first hint of the week's way.
func (r replying) first() []phrase.Line {
	switch {
	case r.kind() == problem.TogetherBoth:
		return nil
	case r.chain():
		return []phrase.Line{r.takeFirst()}
	case len(r.Ways) > 0 && !r.leads() && len(r.calc.Numbers) == 2:
		return []phrase.Line{r.easySteps()}
	case len(r.Ways) > 0 && r.Ways[0].Hint.ID != "" && !r.tells(r.Ways[0].Hint):
		return []phrase.Line{r.Ways[0].Hint}
	}
	return []phrase.Line{phrase.Say("reply.draw")}
}

// easySteps is the first hint where the week's way does not help with the numbers: it
// says where to start and where to go, and leaves the way to the child.
func (r replying) easySteps() phrase.Line {
	a, b := r.calc.Numbers[0], r.calc.Numbers[1]
	switch {
	case r.calc.Op == problem.Plus:
		return phrase.Say("reply.steps.on", phrase.Number("Start", max(a, b)), phrase.Number("More", min(a, b)))
	case r.kind() == problem.TakeFromResult || r.kind().Unknown() == problem.Smaller:
		return phrase.Say("reply.steps.back", phrase.Number("Start", a), phrase.Number("Taken", b))
	}
	return phrase.Say("reply.steps.up", phrase.Number("Start", b), phrase.Number("To", a))
}

// beyond reports whether the story shows at a glance that a number is not allowed: a
// sum is not below its parts, a part not above its whole.
func (r replying) beyond(n int) bool {
	switch {
	case r.chain() || r.kind() == problem.TogetherBoth:
		return false
	case r.calc.Op == problem.Plus:
		return n < slices.Max(r.told)
	}
	return n > r.calc.Numbers[0]
}

// reach tells a child why a number that is beyond is too small, or too big.
func (r replying) reach() phrase.Line {
	if r.calc.Op == problem.Plus {
		return phrase.Say("reply.reach."+r.reachOfSum(), phrase.Number("Part", slices.Max(r.told)))
	}
	return phrase.Say("reply.reach."+r.reachOfPart(), phrase.Number("Whole", r.calc.Numbers[0]))
}

// reachOfSum and reachOfPart end the ids of what bounds the answer, in the words of
// the story. Nothing grows from what came to it.
func (r replying) reachOfSum() string {
	switch r.kind().Situation() {
	case problem.Compare:
		return "bigger"
	case problem.AddTo:
		if r.told[0] < slices.Max(r.told) {
			return "whole"
		}
		return "grows"
	case problem.TakeFrom:
		return "shrinks"
	}
	return "whole"
}

func (r replying) reachOfPart() string {
	switch r.kind().Situation() {
	case problem.Compare:
		return "smaller"
	case problem.AddTo:
		return "ends"
	case problem.TakeFrom:
		return "begins"
	}
	return "part"
}
