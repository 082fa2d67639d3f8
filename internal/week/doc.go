// Package week reads the files that a teacher writes, checks them, and says
// everything that is wrong at once. It knows files and not mathematics: which
// targets, strategies and pictures there are, other rooms tell it.
//
// # The folder
//
//	site.toml                what stays the same all year
//	weeks/2026-09-14.toml    a week: its settings, and a note to families
//
// All files are plain text in UTF-8. A week is named by a date, its Monday. A date
// that can hardly be meant, on another day of the week or far from all others, is
// asked about, unless the file says odd-date = true.
//
// # The site
//
// Only name and languages are needed.
//
//	name            = "Pebble Lane School"
//	class           = "The Heron class"
//	address         = "https://pebblelane.example/home/"
//	languages       = ["en", "es", "ar"]
//	school-language = "en"
//	theme           = "paper"
//	key             = "puddle"
//	grade           = 2
//	answers         = "foot"
//	index           = false
//	days-off        = ["2026-11-26", "2026-12-21 to 2027-01-01"]
//	words           = { make-ten = "ten friends" }
//
// The address is where the site will live. The first language is the class's
// own unless school-language says another. The grade is the class's, 0 or "K" for
// kindergarten; without it that of the newest week counts. Any key will do: another
// key gives other numbers and people to all stories. The answers stand upside down
// at the foot of the printed sheet; with answers = "link" the paper has none, and
// families find them on the pages that its code leads to. With index = true search
// engines may list the pages. On days-off there is no school: a week that has no
// other day is passed over when the next one is begun. The words are what
// the class calls a way or a picture, in its own language: families read them beside
// ours. A name or class that differs by language is a table:
//
//	name = { en = "Pebble Lane School", es = "Escuela Pebble Lane" }
//
// # A week
//
// Only target is needed: its word in the list, the whole sentence that a child can
// say, or the code of a published standard that no other target has. The note is
// written in any of the site's languages, in as many as the teacher writes; a
// language without one shows the class's own. Without a table of notes families read
// a greeting of ours, each in their language. Without show-from they see the week
// from the Friday before.
//
//	target         = "add-within-20"  # homebuild targets lists them
//	focus          = "make-ten"       # the strategy the class practices
//	picture        = "bar-model"
//	stories        = 4                # to try at home, 1 to 8
//	place          = "harbour"        # where the week's stories begin
//	extra-sentence = true             # one sentence that is not needed
//	number-words   = false            # numbers written as words
//	ladder         = false            # easier and harder stories beside the week's own
//	warm-up        = "reach"          # one minute of moving first
//	review         = false            # stories of earlier weeks come back
//	minutes        = 10               # the time it takes
//	show-from      = 2026-09-11       # the day from which families see it
//	allow          = ["office@school.example"]
//	proposed       = ["focus"]        # what nobody chose: on the desk it may follow the rest
//
//	[note]
//	en = """
//	This week we **make a ten first**. Ask your child *why* it works.
//	Questions? Write to office@school.example.
//	"""
//	es = """
//	Esta semana **primero formamos una decena**.
//	"""
//
// Instead of a target from the list, one can be spelled out:
//
//	stories = 3
//
//	[own-target]
//	operation = "addition"      # or "subtraction", "both"
//	largest   = 20              # no number is larger: 5 to 1000
//	kinds     = ["add-to-result", "together-total"]
//	parts     = 2               # or 3 or 4 addends
//	crossing  = "always"        # a ten is crossed; or "never", "either"
//	steps     = 1               # or 2 for a chain
//
// A teacher can write stories for the week; they come before ours and count as
// stories to try. The text is in the class's language, kind says what it
// tells ("homebuild check" lists what fits), answer and translations may be left
// out:
//
//	target = "add-within-20"
//
//	[[own-story]]
//	text   = "Lina has 8 shells. She finds 6 more. How many shells does she have now?"
//	kind   = "add-to-result"
//	answer = "She has 14 shells now."
//
//	[own-story.in]
//	es = "Lina tiene 8 conchas. Encuentra 6 más. ¿Cuántas conchas tiene ahora?"
//
// # The note
//
// A note is Markdown: blank lines between paragraphs, *slanted* and **strong**
// words, lists. Pages are public and fetch nothing, so HTML, pictures, e-mail
// addresses, telephone and id numbers, and links stop the build with the
// reason, in every language alike. What stands in allow, in full, may be shown in
// that week's notes; links must begin with https://.
package week
