package desk

import (
	"slices"
	"strconv"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/school"
	"homebuild/internal/site"
	"homebuild/internal/strategy"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
)

// sheet is a week as it lies on the desk, in a file or laid out in pencil.
type sheet struct {
	sheets
	week.Week
	target activity.Target
	text   string // of its file
	laid   bool   // it has a file
}

// open opens the sheet of a Monday; one that has no file is laid out as the plan
// proposes it.
func (d *Desk) open(date string) (*sheet, error) {
	text := d.text(week.Path(date))
	laid := text != ""
	var overlay []fileText
	if !laid {
		if _, diagnostic := week.ParseDay(date); diagnostic != nil {
			return nil, refuse(date, *diagnostic)
		}
		s := d.read()
		p := d.propose(s, date)
		if p == nil {
			if found := s.findings(); len(found) > 0 {
				return nil, wrong(found)
			}
			return nil, refuse(date, diag.Diagnostic{Text: "no week can be laid out there", Code: codeNoWeek})
		}
		text = proposed(textFile(d.weekFile(s, *p)))
		overlay = []fileText{{week.Path(date), text}}
	}
	return d.opened(date, text, laid, overlay)
}

// opened opens a sheet with files that are not laid down yet.
func (d *Desk) opened(date, text string, laid bool, overlay []fileText) (*sheet, error) {
	s := d.read(overlay...)
	at := slices.IndexFunc(s.Site.Weeks, func(w week.Week) bool { return w.Date == date })
	if s.plan == nil || at < 0 {
		if found := of(s.findings(), date); len(found) > 0 {
			return nil, wrong(found)
		}
		if found := s.findings(); len(found) > 0 {
			return nil, wrong(found)
		}
		return nil, refuse(date, diag.Diagnostic{Text: "the desk has no such week"})
	}
	out := &sheet{sheets: s, Week: s.Site.Weeks[at], text: text, laid: laid}
	if t := s.Target(out.Week.Target); t != nil {
		out.target = *t
	}
	if t, err := out.OwnTarget(); err == nil {
		out.target = t
	}
	return out, nil
}

// named reports whether the week says what it is about. One that does not has no
// stories, and waits for her to choose.
func (s *sheet) named() bool { return s.target.ID != "" }

func (d *Desk) weekFile(s sheets, p school.Proposal) output.File {
	return (&school.Year{Input: s.Input}).WeekFile(p)
}

func textFile(f output.File) string {
	data, err := f.Render()
	if err != nil {
		panic(err) // words of ours
	}
	return string(data)
}

// penciled are the settings that the plan writes and that follow one another.
var penciled = []string{LineTarget, LineWay, LinePicture}

// proposed marks what a new file holds as proposed.
func proposed(text string) string {
	var have []string
	for _, key := range penciled {
		if tomlfile.Get(text, key) != "" {
			have = append(have, key)
		}
	}
	text = tomlfile.Remove(text, LineStories) // the usual number needs no line
	return tomlfile.Set(text, "proposed", tomlfile.QuoteList(have))
}

func refuse(date string, p diag.Diagnostic) error {
	return wrong{{Date: date, Story: -1, Text: p.Text, Hint: p.Hint, Code: p.Code, Quote: p.Value, Mend: true}}
}

// Week is the sheet of a Monday: see [Calls].
func (d *Desk) Week(m Monday) (Week, error) {
	s, err := d.open(m.Date)
	if err != nil {
		return Week{}, err
	}
	words := d.spoken()
	out := Week{
		Date: m.Date, State: d.state(s), Grade: int(s.grade(s.target)), Usual: week.FridayBefore(m.Date),
		Findings: append(of(s.findings(), m.Date), s.advice()...), Letters: s.letters(), Stories: d.stories(s), Lines: d.lines(s),
	}
	if s.named() {
		out.Can, out.About = words.Plain(s.target.CanLine()), words.Plain(s.target.AboutLine())
	}
	return out, nil
}

func (d *Desk) state(s *sheet) State {
	switch {
	case !s.laid:
		return StateProposed
	case d.had(s.Week):
		return StateShown
	}
	return StateWaits
}

// had reports whether families have a week: its day came, and it was sent, so that
// its stories are kept; or it is over. A week that was never sent can change on its
// own Monday, when many a teacher begins.
func (d *Desk) had(w week.Week) bool {
	sent := len(w.Kept) > 0 && !slices.ContainsFunc(w.Kept, func(k week.KeptStory) bool { return k.Proposed })
	return w.Shows(d.today) && (sent || w.Date <= dayBefore(d.today, 7))
}

// ink reports whether she chose a setting: it is written, and not as proposed. No
// way at all can be chosen, too.
func (s *sheet) ink(key string) bool {
	if key == LineWay {
		return !slices.Contains(s.Proposed, key)
	}
	return tomlfile.Get(s.text, key) != "" && !slices.Contains(s.Proposed, key)
}

// lines are the lines of a sheet with what stands on them.
func (d *Desk) lines(s *sheet) []Line {
	words := d.spoken()
	place := s.Place
	if stories := s.exercises(); place == "" && len(stories) > 0 {
		place = stories[0].Story.Place
	}
	kind := s.Picture
	if kind == "" && len(s.target.Pictures) > 0 {
		kind = s.target.Pictures[0].String()
	}
	line := func(key, value, named string) Line {
		return Line{Key: key, Value: value, Words: named, Ink: s.ink(key)}
	}
	number := func(key string, n int) Line { return line(key, strconv.Itoa(n), "") }
	yes := func(key string, on bool) Line { return line(key, strconv.FormatBool(on), "") }
	target := line(LineTarget, s.Week.Target, "")
	if s.named() {
		target.Words = words.Plain(s.target.CanLine())
	}
	way := line(LineWay, s.Focus, name(words, "strategy", s.Focus))
	way.Misfit = d.misfitWay(s)
	shown := line(LinePicture, kind, name(words, "picture", kind))
	shown.Misfit = d.misfitPicture(s)
	warmUp := line(LineWarmUp, s.WarmUp, name(words, "warm-up", s.WarmUp))
	return []Line{
		target, way, shown, line(LinePlace, place, name(words, "setting", place)),
		number(LineStories, s.Week.Stories), yes(LineExtra, s.ExtraSentence), yes(LineReview, s.Review), yes(LineLadder, s.Ladder), yes(LineWords, s.NumberWords),
		warmUp, number(LineMinutes, s.Minutes), line(LineShowFrom, s.ShowFrom, ""),
	}
}

// name is what the id of a message family is called.
func name(words *i18n.Language, family, id string) string {
	if id == "" {
		return ""
	}
	return say(words, family+"."+id+".name")
}

// misfitWay says why the way does not fit the target.
func (d *Desk) misfitWay(s *sheet) string {
	way, ok := strategy.ParseName(s.Focus)
	if !ok || !s.named() || slices.Contains(s.target.Strategies, way) {
		return ""
	}
	return d.spoken().Plain(s.target.CanLine())
}

// misfitPicture says which stories the picture does not show: "2, 4".
func (d *Desk) misfitPicture(s *sheet) string {
	if s.Picture == "" {
		return ""
	}
	var not []string
	for i, x := range s.exercises() {
		if !fits(s.Picture, x.Story.Problem) {
			not = append(not, strconv.Itoa(i))
		}
	}
	return strings.Join(not, ", ")
}

func (s *sheet) exercises() []site.Exercise {
	if s.plan == nil {
		return nil
	}
	return s.plan.Exercises(s.Date)
}

// letters are what she writes, in each of the site's languages.
func (s *sheet) letters() []Letter {
	var out []Letter
	for _, tag := range s.Site.Languages {
		l := Letter{Tag: tag, Text: s.Notes[tag], Ink: s.Notes[tag] != ""}
		if lang, ok := s.Catalog.Language(tag); ok {
			l.Starter = lang.Word("learn.note.greeting")
		}
		out = append(out, l)
	}
	return out
}

// stories are those of the week, as a teacher reads them.
func (d *Desk) stories(s *sheet) []Story {
	words, class := d.spoken(), s.class()
	draw := pictures{prefix: "story-", words: class}
	own, flagged := len(s.OwnStories), s.flagged()
	var out []Story
	for i, x := range s.exercises() {
		p := x.Story.Problem
		story := Story{
			Number: i, Event: x.Story.Event, Picture: draw.draw(x.Picture), Equation: class.Equation(p.Equation()), Answer: answer(class, p),
			Kind: kindOf(p.Kind(), words), Size: sizeOf(p), Extra: x.Story.ExtraNumber,
		}
		if x.Returns != nil {
			story.Returns = words.Plain(x.Returns.CanLine())
		}
		switch {
		case x.Story.Own != nil:
			given := s.OwnStories[i-1]
			text := ""
			for _, run := range x.Story.Own.By[class.Tag()].Runs {
				text += run.Text
			}
			story.Text, story.Ink = []string{text}, true
			story.Own = &OwnText{Texts: textsOf(s.Site.School, given), Answer: given.Answer, Reading: x.Story.Problem.Kind().String() + " " + x.Story.Problem.Equation().String()}
		default:
			for _, sentence := range x.Story.Sentences {
				story.Text = append(story.Text, class.Plain(sentence.Line))
			}
			if at := max(0, i-own); at < len(flagged) {
				story.Ink = inked(flagged[at])
			}
		}
		out = append(out, story)
	}
	return out
}

func textsOf(school string, s week.OwnStory) map[string]string {
	out := map[string]string{school: s.Text}
	for tag, text := range s.In {
		out[tag] = text
	}
	return out
}

// answer is the number that a story asks for; empty where any pair is right.
func answer(in *i18n.Language, p problem.Problem) string {
	if p.Pairs() != nil {
		return ""
	}
	return in.Number(p.Answer())
}

func fits(pictureID string, p problem.Problem) bool {
	kind, ok := picture.ParseKind(pictureID)
	return ok && picture.Fits(kind, p)
}
