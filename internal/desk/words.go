package desk

import (
	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
	"homebuild/internal/picture"
	"homebuild/internal/picture/svg"
	"homebuild/internal/problem"
)

// happens and asks are the words of [Kind] for the rows and columns of the table
// of situations.
var (
	happens = map[problem.Situation]string{
		problem.AddTo: "joins", problem.TakeFrom: "leaves", problem.PutTogether: "parts", problem.Compare: "compared",
	}
	asks = map[problem.Unknown]string{
		problem.Result: "result", problem.Change: "change", problem.Start: "start", problem.Total: "total", problem.Addend: "part",
		problem.BothAddends: "pairs", problem.DifferenceUnknown: "difference", problem.Bigger: "bigger", problem.Smaller: "smaller",
	}
)

func kindOf(k problem.Kind, words *i18n.Language) Kind {
	out := Kind{ID: k.String(), Happens: happens[k.Situation()], Asks: asks[k.Unknown()], Words: words.Plain(activity.KindName(k))}
	if k.Steps() != nil {
		out.Happens = "steps"
	}
	return out
}

func sizeOf(p problem.Problem) Size {
	out := Size{Within: 10, Steps: max(1, len(p.Kind().Steps()))}
	for _, work := range activity.WorksOf(p) {
		out.Within = max(out.Within, work.Within)
		out.PastTen = out.PastTen || work.Passes
	}
	return out
}

// pictures draws pictures that can stand in one page together.
type pictures struct {
	prefix string
	words  *i18n.Language
	drawn  int
}

func (p *pictures) draw(of picture.Picture) string {
	p.drawn++
	return svg.Draw(of, svg.Options{ID: p.prefix + string(rune('0'+p.drawn/10)) + string(rune('0'+p.drawn%10)), Say: p.words.Plain, Number: p.words.Number})
}

// target is a sentence in the desk's words.
func (d *Desk) target(t activity.Target, met map[string]string) Target {
	words := d.spoken()
	return Target{
		ID: t.ID, Can: words.Plain(t.CanLine()), About: words.Plain(t.AboutLine()), Grade: int(t.Grade), Codes: t.Standards, Met: met[t.ID],
	}
}

// say is a message without places, where there is one.
func say(words *i18n.Language, id string) string {
	if !words.Has(id) {
		return ""
	}
	return words.Plain(phrase.Say(id))
}

// Targets are the sentences that a search finds: see [Calls].
func (d *Desk) Targets(s Search) ([]Target, error) {
	words, in := d.spoken(), d.read()
	met := in.met()
	var out []Target
	for _, t := range activity.Find(s.Words, in.Targets, func(t activity.Target) string {
		return words.Plain(t.CanLine()) + " " + words.Plain(t.AboutLine())
	}) {
		if s.Words != "" || int(t.Grade) == s.Grade {
			out = append(out, d.target(t, met))
		}
	}
	return out, nil
}

// met are the newest Mondays that were about targets, by their ids.
func (s sheets) met() map[string]string {
	out := map[string]string{}
	for _, w := range s.Site.Weeks { // oldest first
		out[w.Target] = w.Date
	}
	return out
}
