// Package site turns a school's week files and a language into the list of
// files to publish. It is pure: the same input gives the same files, byte for
// byte, in any order of rendering and on any machine. It neither reads nor
// writes a disk; internal/publish does.
//
// The way of a week through this room:
//
//	week file ─► lesson: the same problems and stories for every language
//	lesson + language ─► source: all that one page is made from, and so its key
//	source ─► File: a path and a function that makes the view and renders it
package site
