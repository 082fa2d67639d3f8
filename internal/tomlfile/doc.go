// Package tomlfile reads the TOML files that people write: settings of a site
// and of its weeks, targets, stories, looks, and the words of a language. It is
// the only room that knows the TOML library.
//
// [Parse] walks a text once and keeps every value with its line ([Value]). What
// cannot be read is told in plain words with what to write instead, and reading
// goes on behind it, so that a person mends a file once.
//
// A file of settings has a [Schema]: which keys there are and what each takes.
// [File.Section] then hands out values of the right sort, and tells where one is
// not, where a key is unknown and where one is left out. A file of words has no
// schema; [File.Values] lists what it says.
package tomlfile
