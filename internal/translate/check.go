package translate

import (
	"fmt"
	"unicode/utf8"

	"homebuild/internal/diag"
	"homebuild/internal/i18n"
)

// advice is what a careful reader looks at beside what i18n refuses, and may leave:
// texts that are much longer than the English, and may not have room on a page.
func advice(file *i18n.File) diag.Diagnostics {
	var out diag.Diagnostics
	for _, m := range file.Messages {
		english := m.English
		if m.Family == "language" || m.Family == "words" || m.Key == "gender" || english == m || m.Gender == "" && m.ID != english.ID {
			continue
		}
		for _, c := range i18n.Categories() {
			if wrong := tooLong(m.Text(c), english.Other); wrong != "" {
				out = append(out, diag.Diagnostic{
					File: file.Path, Line: m.LineOf(c.String()), Text: m.ID + wrong, Hint: "say it as briefly as the English, if the language can",
				})
			}
		}
	}
	return out
}

// tooLong compares the lengths of two texts without their places. Short texts
// grow the most.
func tooLong(text, english string) string {
	n, of := utf8.RuneCountInString(i18n.WithoutPlaces(text)), utf8.RuneCountInString(i18n.WithoutPlaces(english))
	if n <= 15+of*22/10 {
		return ""
	}
	return fmt.Sprintf(" has %d letters, the English %d", n, of)
}
