// Package page turns the parts of a week into HTML: one self-contained file a
// page, with its style and pictures inside, no script and no request. It is
// the only room that knows tags.
//
// The structs here are the pages as data. They hold what is to be said
// (phrase.Line), shown (picture.Picture) or worked out, never HTML; a
// *i18n.Language says it. Links are relative, as written into href.
//
// Nothing here reads files, except a theme's through io/fs, and nothing
// writes them.
package page
