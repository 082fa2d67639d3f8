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
	line := phrase.Say("story.add-to-result.1.change",
		phrase.Person("A", "person.lina"), phrase.Counted("Change", "thing.shell", 2)).About("person.lina")
	for _, l := range catalog.Languages() {
		fmt.Println(l.Say(line))
	}
	// Output:
	// Lina finds 2 shells.
	// Лина нашла 2 ракушки.
	// وجدت لينا صدفتين.
}
