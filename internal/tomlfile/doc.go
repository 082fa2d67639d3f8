// Package tomlfile reads the TOML files that people write: settings of a site
// and of its weeks, targets, stories, looks, and the words of a language. It is
// the only room that knows the TOML library.
//
// [Parse] walks a text once and keeps every value with its line ([Value]). What
// cannot be read is told in plain words with what to write instead, and reading
// goes on behind it, so that a person mends a file once.
//
// A file of settings is read as sections ([File.Section]): typed methods hand out
// values of the right sort, tell where one is not, and so say which keys there
// are; [File.Problems] tells of all others. A file of words has any keys;
// [File.Values] lists what it says.
package tomlfile
