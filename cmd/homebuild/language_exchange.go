package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/output"
	"homebuild/internal/pofile"
	"homebuild/internal/publish"
	"homebuild/internal/school"
	"homebuild/internal/textfile"
	"homebuild/internal/translate"
)

func newLanguageExportCmd(s *streams) *cobra.Command {
	return languageCommand("export xx [folder]", "a PO file for the programs of translators", s.exportLanguage)
}

func newLanguageImportCmd(s *streams) *cobra.Command {
	return languageCommand("import xx [folder]", "bring a PO file back into the language file", s.importLanguage)
}

// poPath is where the PO file of a language stands in the folder.
func (f *folder) poPath(tag string) string {
	return filepath.Join(f.path, school.LocalesFolder, tag+".po")
}

// openForExchange is a language of the folder, or one that comes with the program.
func (f *folder) openForExchange(tag string) (*translate.Draft, error) {
	if f.path == "" {
		return nil, wrongUse(`there is neither "site.toml" nor a folder "locales" here`, "give a school's folder, or go into it")
	}
	if tag == i18n.SourceTag {
		return nil, wrongUse("English is what the other languages are made from", "give another language")
	}
	d, problems := translate.Open(tag, f.Languages()...)
	if len(problems) > 0 {
		return nil, f.Locate(problems)
	}
	return d, nil
}

// exportLanguage writes the PO file beside the language files. A file that holds texts
// which were not brought back is left alone.
func (s *streams) exportLanguage(_ *cobra.Command, from *folder, tag string) error {
	d, err := from.openForExchange(tag)
	if err != nil {
		return err
	}
	path := from.poPath(tag)
	data := pofile.Export(d)
	before, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		_, err = publish.Create(filepath.Dir(path), []output.File{output.Text(filepath.Base(path), string(data))})
	case err != nil:
		return err
	default:
		if in, problems := pofile.Import(d, path, string(before)); len(problems) > 0 || in.Changed+len(in.Refused) > 0 {
			s.tell(fmt.Sprintf("%q has texts that the language file does not have, and nothing was changed", path),
				fmt.Sprintf("homebuild language import %s%s brings them in; or take the file away", tag, argument(from.path)))
			return errReported
		}
		err = publish.Replace(path, before, data)
	}
	if err != nil {
		return err
	}
	s.say("%s has %s, with their notes", path, diag.Amount(len(d.Entries()), "text", "texts"))
	s.say("back      homebuild language import %s%s", tag, argument(from.path))
	return nil
}

// importLanguage brings the PO file's texts into the folder's own language file.
func (s *streams) importLanguage(_ *cobra.Command, from *folder, tag string) error {
	d, err := from.openForExchange(tag)
	if err != nil {
		return err
	}
	before, err := from.ownLanguage(tag)
	if err != nil {
		return err
	}
	path := from.poPath(tag)
	text, wrong := textfile.ReadUpTo(from.files, school.LocalesFolder+"/"+tag+".po", pofile.MaxSize)
	if wrong != nil {
		wrong.File = path
		return diag.Diagnostics{*wrong}
	}
	in, problems := pofile.Import(d, path, text)
	if len(problems) > 0 {
		return problems
	}
	if string(in.Text) != string(before) {
		if err := publish.Replace(from.languagePath(tag), before, in.Text); err != nil {
			return err
		}
	}
	s.problems(in.Refused)
	s.say("%s: %s taken", from.languagePath(tag), diag.Amount(in.Changed, "changed text", "changed texts"))
	if in.Fuzzy > 0 {
		s.say("%s marked fuzzy, and not taken: look at each and take the mark away", diag.Amount(in.Fuzzy, "text is", "texts are"))
	}
	if len(in.Refused) > 0 {
		s.tell(diag.Amount(len(in.Refused), "text", "texts")+" not taken", "mend them in "+path+", and import it again")
		return errReported
	}
	return nil
}
