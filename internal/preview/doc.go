// Package preview shows a site on the maker's own computer while its files are
// being written: a page with a list of the site's pages beside one of them at
// the width of a phone. When a file is saved the site is made anew and the page
// shown follows by itself; when a file cannot be right, the page says where and
// what to write, and the last good page stays.
//
// Everything that is served comes from memory: the pages of the last good site
// and the shell around them. No path of a request ever reaches a disk. Pages
// are rendered when they are asked for. The server listens on 127.0.0.1 alone
// and answers only to that name, so that no page elsewhere can reach it through
// a name of its own (DNS rebinding).
package preview
