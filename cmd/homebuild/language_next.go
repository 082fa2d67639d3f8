package main

import (
	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/school"
	"homebuild/internal/translate"
)

// wordsAnHour is how many English words a volunteer turns into her language in about
// an hour (common practice, no published source).
const wordsAnHour = 250

func newLanguageNextCmd(s *streams) *cobra.Command {
	var asJSON bool
	cmd := languageCommand("next xx [folder]", "an hour's work, what families see first at its head", func(_ *cobra.Command, from *folder, tag string) error {
		from.Today = s.today
		draft, layers, problems := school.Layers(from.School, tag)
		if len(problems) > 0 {
			return from.Locate(problems)
		}
		if asJSON {
			return s.writeJSON(layers)
		}
		return s.next(from, draft, layers)
	})
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON: all that is to be done")
	return cmd
}

// next tells the first texts that are to be written, and what comes after them.
func (s *streams) next(from *folder, draft *translate.Draft, layers []school.Layer) error {
	tag := draft.Status.Tag
	if len(draft.Problems) > 0 {
		s.problems(from.Locate(from.fewProblems(tag, draft.Problems)))
		s.tell(diag.Amount(len(draft.Problems), "thing", "things")+" to mend first", "")
		return errReported
	}
	first := true
	for i, entry := range entriesOf(layers) {
		s.say("%s", entry)
		if first && entry.Texts > 0 {
			first = false
			s.hour(from.languagePath(tag), layers[i])
		}
	}
	if first {
		s.say("%s has all pages; homebuild language check %s says what its file lacks besides", tag, tag+argument(from.path))
	}
	return nil
}

// hour lists the first texts of a layer, as many as take about an hour.
func (s *streams) hour(file string, l school.Layer) {
	words := 0
	for i, w := range l.Wanted {
		if words += w.Words; words > wordsAnHour && i > 0 {
			s.say("")
			s.say("that is about an hour; %s more after it", diag.Amount(len(l.Wanted)-i, "text", "texts"))
			break
		}
		s.say("")
		if w.Note != "" {
			s.say("# %s", w.Note)
		}
		s.say("%s:%d: %s", file, w.Line, w.ID)
		s.say("  %q", w.English)
	}
	s.say("")
}
