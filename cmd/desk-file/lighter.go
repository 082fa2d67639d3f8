package main

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"homebuild/internal/i18n"
	"homebuild/internal/pattern"
	"homebuild/locales"
)

var (
	hashSetting = pattern.Of(`hash = "([0-9a-f]+)", `)
	forWriters  = pattern.Of(`(?m)^(#|description = ).*\n`)
)

// lighterLanguages puts language files into the overlay that leave out what only
// translators read: remarks, descriptions and, message by message, the hash of the
// English text. It tells which messages have to be looked at again; those of which
// it says that they are as the English is need none.
func lighterLanguages(dir string, replace map[string]string) error {
	english, problems := i18n.LoadSource(locales.Files)
	if len(problems) > 0 {
		return problems
	}
	for _, tag := range i18n.Tags(locales.Files) {
		name := tag + ".toml"
		text, err := fs.ReadFile(locales.Files, name)
		file, problems := i18n.ReadFile(tag, locales.Files)
		if err != nil || len(problems) > 0 {
			return errors.Join(err, problems)
		}
		english.Hold(file)
		reviewed := file.Message("language.reviewed") != nil // held to each hash
		fresh := map[string]bool{}
		for _, m := range file.Messages {
			fresh[m.Hash] = m.Hash == m.EnglishHash() && !reviewed
		}
		text = forWriters().ReplaceAll(text, nil)
		text = hashSetting().ReplaceAllFunc(text, func(setting []byte) []byte {
			if fresh[string(hashSetting().FindSubmatch(setting)[1])] {
				return nil
			}
			return setting
		})
		light := filepath.Join(dir, name)
		if err := os.WriteFile(light, text, 0o644); err != nil {
			return err
		}
		whole, err := filepath.Abs(filepath.Join("locales", name))
		if err != nil {
			return err
		}
		replace[whole] = light
	}
	return nil
}
