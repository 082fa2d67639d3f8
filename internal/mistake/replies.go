package mistake

import (
	"cmp"
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Sort is the sort of a reply.
type Sort uint8

const (
	Right      Sort = iota + 1
	Known           // known causes give the number; the likeliest are said, two at most
	Away            // one, ten or a hundred away from the answer
	OutOfReach      // the story does not allow the number: below a part, above the whole
	Close           // near the answer
	TooSmall
	TooBig
)

// Reply is what to say to a child who answers with one of some numbers. A reply to
// a number that is not right never tells the answer.
type Reply struct {
	Sort    Sort
	Numbers []int   // in order; never empty
	Causes  []Cause // for Known: all that give one of the numbers, said or not
	Lines   []phrase.Line
}

// Help has a reply to every number that a child can pick. Each number stands in one
// reply, and no two replies say the same.
type Help struct {
	Right Reply
	// Specific are the replies to single numbers: of known causes, and away.
	Specific []Reply
	// General are the replies to all other numbers, by where these lie: out of
	// reach, close, too small, too big; those that no number has are left out.
	General []Reply
	// Hint is what to say to a child of whose number nothing is known.
	Hint []phrase.Line
}

// To is the reply to a number.
func (h Help) To(n int) (Reply, bool) {
	for _, r := range h.All() {
		if slices.Contains(r.Numbers, n) {
			return r, true
		}
	}
	return Reply{}, false
}

// All lists every reply, the right one first.
func (h Help) All() []Reply { return slices.Concat([]Reply{h.Right}, h.Specific, h.General) }

// mostReplies is how many replies a story has at most, so that a page of stories
// stays light.
const mostReplies = 17

// Help gives the replies to the numbers from 0 to within. For both addends unknown
// the number is what the two that a child picked make together. The openers of the
// general replies take turns; turn says which is the first, so that neighboring
// stories begin with others. Where there are too many replies, the mistakes least
// worth one have none.
func (q Question) Help(within, turn int) Help {
	r := replying{reading: newReading(q), mistakes: q.Mistakes(), turn: turn}
	help := r.help(within)
	for help.size() > mostReplies && r.dropLeast() {
		help = r.help(within)
	}
	return help
}

func (h Help) size() int { return 1 + len(h.Specific) + len(h.General) }

// dropLeast drops the mistake least worth a reply, with all that have the same hint;
// false where only those of the week's way are left.
func (r *replying) dropLeast() bool {
	var least Mistake
	for _, m := range r.mistakes {
		if cmp.Or(cmp.Compare(m.origin, least.origin), cmp.Compare(m.Cause.likelihood(), least.Cause.likelihood())) >= 0 {
			least = m
		}
	}
	if least.origin == weeksWay {
		return false
	}
	r.mistakes = slices.DeleteFunc(r.mistakes, func(m Mistake) bool {
		return m.origin == least.origin && same([]phrase.Line{m.Hint}, []phrase.Line{least.Hint})
	})
	return true
}

func (r replying) help(within int) Help {
	help := Help{Right: Reply{Sort: Right, Lines: []phrase.Line{r.right()}}, Hint: r.first()}
	known := r.known()
	for n := range within + 1 {
		if n == r.asked() {
			help.Right.Numbers = []int{n}
		} else if reply, ok := known[n]; ok {
			help.Specific = gather(help.Specific, n, reply)
		} else if lines := r.awayLines(n); len(lines) > 0 {
			help.Specific = gather(help.Specific, n, Reply{Sort: Away, Lines: lines})
		} else {
			help.General = r.general(help.General, n)
		}
	}
	return help
}

// gather puts n with the reply that says the same, or begins one.
func gather(all []Reply, n int, reply Reply) []Reply {
	i := slices.IndexFunc(all, func(r Reply) bool { return same(r.Lines, reply.Lines) })
	if i < 0 {
		i, all = len(all), append(all, reply)
	}
	all[i].Numbers = append(all[i].Numbers, n)
	for _, c := range reply.Causes {
		if !slices.Contains(all[i].Causes, c) {
			all[i].Causes = append(all[i].Causes, c)
		}
	}
	return all
}

// same reports whether two replies of one problem say the same.
func same(a, b []phrase.Line) bool {
	return slices.EqualFunc(a, b, func(x, y phrase.Line) bool {
		return x.ID == y.ID && slices.EqualFunc(x.Values, y.Values, func(v, w phrase.Value) bool {
			return v.Name == w.Name && v.N == w.N && slices.EqualFunc(v.Equation.Sides(), w.Equation.Sides(), slices.Equal)
		})
	})
}

// replying answers number after number for one question.
type replying struct {
	reading
	mistakes []Mistake
	turn     int
}

// asked is the right number: of both addends, what they make together.
func (r replying) asked() int {
	if r.kind() == problem.TogetherBoth {
		return r.calc.Value()
	}
	return r.answer
}

func (r replying) right() phrase.Line {
	if r.kind() == problem.TogetherBoth {
		return phrase.Say("reply.right-parts", phrase.Number("Total", r.calc.Value()))
	}
	return phrase.Say("reply.right", phrase.Equation("Equation", r.Problem.Equation().Solved()))
}

// known are the replies to the numbers that known causes give. Causes about which
// the same is said count as one; the likeliest are said.
func (r replying) known() map[int]Reply {
	byNumber := map[int][]Mistake{}
	for _, m := range r.mistakes {
		byNumber[m.Answer] = append(byNumber[m.Answer], m)
	}
	replies := map[int]Reply{}
	for n, mistakes := range byNumber {
		reply := Reply{Sort: Known}
		for _, m := range mistakes {
			reply.Causes = append(reply.Causes, m.Cause)
		}
		reply.Lines = append(r.commoner(n, mistakes), sayable(mistakes)...)
		reply.Lines = reply.Lines[:min(mostSaid, len(reply.Lines))]
		if len(reply.Lines) > 1 {
			reply.Lines = slices.Insert(reply.Lines, 0, phrase.Say("reply.several"))
		}
		replies[n] = reply
	}
	return replies
}

// commoner is what is said first of a number that is one, ten or a hundred away, where
// all that is known else is which numbers were used, or what another way than the
// week's would have come to.
func (r replying) commoner(n int, mistakes []Mistake) []phrase.Line {
	better := func(m Mistake) bool {
		return m.origin != nearBy && m.origin != otherWays && m.Cause.likelihood() != otherSet
	}
	if id := r.away(n); id != "" && !slices.ContainsFunc(mistakes, better) {
		return []phrase.Line{phrase.Say(id)}
	}
	return nil
}
