package mistake

import (
	"slices"

	"homebuild/internal/phrase"
	"homebuild/internal/problem"
)

// Verdict is the sort of a reply.
type Verdict uint8

const (
	Right    Verdict = iota + 1
	Known            // one known cause gives the number
	Several          // more than one does, and all are named
	TooSmall         // no known cause; the number is below the answer
	TooBig           // no known cause; the number is above the answer
)

// Check is what lets a child see that a number is too small or too big.
type Check uint8

const (
	NoCheck   Check = iota
	PartWhole       // a whole is never smaller than a part
	Tens            // the tens alone are more, or both numbers made bigger are less
	Count           // count on, jump on, or join two first
	PutBack         // put the number with the known part: is it the whole?
	StepWise        // work the first of two steps again
)

// Reply is what to say to a child who picked a number. Two numbers with the
// same reply have equal Lines.
type Reply struct {
	Verdict Verdict
	Causes  []Cause // for Known one, for Several all
	Check   Check   // for TooSmall and TooBig
	Lines   []phrase.Line
}

// ReplyTo gives the reply to n, which must not be negative. A reply to a number
// that is not right never tells the answer.
func ReplyTo(p problem.Problem, extra, n int) Reply {
	return newReplies(p, extra).to(n)
}

// General gives the replies for any number below and above the answer that no
// other reply fits, for ranges too large to list.
func General(p problem.Problem) (small, big Reply) {
	r := newReplies(p, 0)
	return r.general(TooSmall, r.lastCheck()), r.general(TooBig, r.lastCheck())
}

// replies answers number after number for one problem.
type replies struct {
	question
	mistakes []Mistake
}

func newReplies(p problem.Problem, extra int) replies {
	return replies{newQuestion(p, extra), Of(p, extra)}
}

func (r replies) to(n int) Reply {
	if right(r.problem, n) {
		return Reply{Verdict: Right, Lines: []phrase.Line{r.rightLine(n)}}
	}
	var known []Mistake
	for _, m := range r.mistakes {
		if m.Answer == n {
			known = append(known, m)
		}
	}
	switch {
	case len(known) > 0:
		return named(known)
	case n < r.problem.Answer():
		return r.general(TooSmall, r.checkSmall(n))
	}
	return r.general(TooBig, r.checkBig(n))
}

func (r replies) rightLine(n int) phrase.Line {
	if r.asksPair() {
		total := r.calc.Value()
		pair := problem.Equal(problem.Number(total), problem.Sum(n, total-n))
		return phrase.Say("reply.right-pair", phrase.Equation("Equation", pair))
	}
	return phrase.Say("reply.right", phrase.Equation("Equation", r.problem.Equation().Solved()))
}

// named is the reply for a number that known causes give.
func named(known []Mistake) Reply {
	reply := Reply{Verdict: Known}
	if len(known) > 1 {
		reply.Verdict = Several
		reply.Lines = append(reply.Lines, phrase.Say("reply.several"))
	}
	for _, m := range known {
		reply.Causes = append(reply.Causes, m.Cause)
		reply.Lines = append(reply.Lines, m.Hint())
	}
	return reply
}

// Hint says what to look at, never that something is wrong.
func (m Mistake) Hint() phrase.Line {
	id := "mistake." + m.Cause.String() + ".hint"
	if m.Equation.IsZero() {
		return phrase.Say(id)
	}
	return phrase.Say(id, phrase.Equation("Equation", m.Equation))
}

// Name is the line that tells a teacher what to listen for.
func (c Cause) Name() phrase.Line { return phrase.Say("mistake." + c.String() + ".name") }

// Group is the numbers that share one reply, in order.
type Group struct {
	Numbers []int
	Reply   Reply
}

// Groups gives the choices by reply, in the order of their first number.
func Groups(p problem.Problem, extra int, choices []int) []Group {
	r := newReplies(p, extra)
	var out []Group
	for _, n := range choices {
		reply := r.to(n)
		i := slices.IndexFunc(out, func(g Group) bool { return same(g.Reply, reply) })
		if i < 0 {
			out = append(out, Group{Numbers: []int{n}, Reply: reply})
			continue
		}
		out[i].Numbers = append(out[i].Numbers, n)
	}
	return out
}

// same reports whether two replies of one problem say the same. A known cause
// can have another working for each number, and a right pair its own equation.
func same(a, b Reply) bool {
	return slices.EqualFunc(a.Lines, b.Lines, func(x, y phrase.Line) bool {
		return x.ID == y.ID && slices.EqualFunc(x.Values, y.Values, sameValue)
	})
}

func sameValue(x, y phrase.Value) bool {
	return x.Name == y.Name && x.N == y.N && x.Equation.String() == y.Equation.String()
}
