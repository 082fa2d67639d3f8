// Package i18n turns lines without words into sentences of a language.
//
// A language is one TOML file, xx.toml, in the message format of go-i18n:
// nested tables become dotted ids, and a message is a string or a table of
// CLDR plural categories with a description for the translator. en.toml is
// the source; every other file is held against it. [Load] reads files, proves
// them and makes each language ready once; after that saying a line is a
// look-up, and nothing can be missing. There is no fallback to another
// language anywhere: a file that is not whole does not load, and each problem
// names its line and what to write.
//
// The parts of a file:
//
//	[language]      own name, direction, digits, who reviewed it
//	[words]         number words, if the language has a table
//	[thing.shell]   what can be counted, in every form that a sentence needs
//	[person.lina]   names, with gender and cases where the language has them
//	[story...]      whole sentences with places: "{{.A}} has {{.Start}}."
//
// A sentence asks for the form it needs: {{.Start.accusative}} is the message
// count-accusative of whatever is counted, {{.A.genitive}} the genitive of a
// name, {{.Way.dative}} the message "<id>-dative" or "<id>.dative". A sentence
// whose verb agrees with the person it is about has one text for each gender
// instead of one text. Load proves every form for every thing and every person.
//
// What a translator does with a file that is not whole yet is the room
// internal/translate; it builds on [ReadFile], [LoadSource] and [Source.Prove].
//
// Files may come from strangers. A message is text and places, nothing else:
// no functions, loops or markup, no invisible or direction-changing
// characters, at most 600 characters.
package i18n
