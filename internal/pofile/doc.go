// Package pofile gives a language file to the programs that translators use, and takes
// it back: as PO, the format of GNU gettext (GNU gettext manual, "The Format of PO
// Files" and "Plural forms").
//
// An entry is a message: its id is the context (msgctxt), its English the msgid, what
// the note says an extracted comment. Its forms are those of the language's plural
// categories in CLDR's order; the head's Plural-Forms says by an expression which number
// takes which, and coming back it is asked for each number, so that a program may have
// put another expression there. A category that no whole number has (Russian "other")
// is behind the others, if the file has it. An entry is fuzzy while its English has
// changed since it was translated; a fuzzy text is not taken back.
//
// The head of a language file and genders are settings and stay in the file.
package pofile
