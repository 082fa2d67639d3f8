package i18n_test

import (
	"fmt"
	"log"
	"os"

	"homebuild/internal/i18n"
	"homebuild/internal/phrase"
)

func ExampleLanguage_Say() {
	catalog, problems := i18n.Load([]string{"en", "ru", "ar"}, os.DirFS("testdata/locales"))
	if len(problems) > 0 {
		log.Fatal(problems)
	}
	line := phrase.Say("event.kitchen.soup.answer-out", phrase.Counted("Change", "thing.soup-bowl", 2))
	for _, l := range catalog.Languages() {
		fmt.Println(l.Say(line))
	}
	// Output:
	// The top floor ate 2 bowls of soup.
	// На верхнем этаже съели 2 тарелки супа.
	// أكل جيران الطابق الأعلى صحني حساء.
}
