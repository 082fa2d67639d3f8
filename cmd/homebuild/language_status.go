package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/school"
	"homebuild/internal/translate"
)

func newLanguageStatusCmd(s *streams) *cobra.Command {
	var asJSON bool
	cmd := &cobra.Command{
		Use:   "status [folder]",
		Short: "how far each language has come",
		Args:  atMostOneFolder,
		RunE: func(_ *cobra.Command, args []string) error {
			from, err := openLanguages(strings.Join(args, ""))
			if err != nil {
				return err
			}
			defer from.close()
			return languageStatus(s, from, asJSON)
		},
		ValidArgsFunction: folders,
	}
	cmd.Flags().BoolVar(&asJSON, "json", false, "write JSON")
	return cmd
}

// statusEntry is a language as people and other programs read it.
type statusEntry struct {
	translate.Summary
	Layers []layerEntry `json:"layers"` // what families get by what is still to be written
}

func languageStatus(s *streams, from *folder, asJSON bool) error {
	status, problems := translate.StatusOf(from.Languages()...)
	if len(problems) > 0 {
		return from.Locate(problems)
	}
	english := school.English()
	entries := each(status, func(s translate.Status) statusEntry { return statusEntry{s.Summary(english), entriesOf(nil)} })
	for i := range entries {
		if e := &entries[i]; e.Missing > 0 && e.Problems == 0 {
			_, layers, problems := school.Layers(from.School, e.Tag)
			if len(problems) > 0 {
				return from.Locate(problems)
			}
			e.Layers = entriesOf(layers)
		}
	}
	if asJSON {
		return s.writeJSON(entries)
	}
	s.statusTable(entries)
	return nil
}

// layerEntry is some of the pages that a language could have.
type layerEntry struct {
	Name  string `json:"name"`
	Pages int    `json:"pages"`
	Made  int    `json:"made"`
	Texts int    `json:"texts"` // that they wait for, beyond what earlier layers do
	Words int    `json:"words"` // of the English of these
}

// String says how far the layer is.
func (l layerEntry) String() string {
	switch {
	case l.Texts > 0:
		return fmt.Sprintf("%s: %s to write, %d words", l.Name, diag.Amount(l.Texts, "text", "texts"), l.Words)
	case l.Made < l.Pages:
		return fmt.Sprintf("%s: %d of %s, the others wait for the texts above", l.Name, l.Made, diag.Amount(l.Pages, "page", "pages"))
	}
	return l.Name + ": made"
}

func entriesOf(layers []school.Layer) []layerEntry {
	out := []layerEntry{} // [] in JSON
	for _, l := range layers {
		out = append(out, layerEntry{l.Name, l.Pages, l.Made, len(l.Wanted), l.Words()})
	}
	return out
}

// statusTable writes the own names last: not every script keeps to columns.
func (s *streams) statusTable(entries []statusEntry) {
	row := func(tag, done, missing, stale, left, mend, review, name any) {
		s.say("%s", strings.TrimRight(fmt.Sprintf("%-8v %6v %8v %6v %9v %8v  %-10v %v", tag, done, missing, stale, left, mend, review, name), " "))
	}
	row("", "done", "missing", "stale", "left out", "to mend", "review", "")
	for _, e := range entries {
		row(e.Tag, e.Done, e.Missing, e.Stale, len(e.LeftOut), e.Problems, e.Review, e.Name)
	}
	for _, e := range entries {
		if len(e.Lost) > 0 {
			s.say("%s cannot tell %s yet; it has the pages of weeks whose stories it tells", e.Tag, strings.Join(e.Untold, "; "))
		}
		for _, l := range e.Layers {
			s.say("%s  %s", e.Tag, l)
		}
	}
}
