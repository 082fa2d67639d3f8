// Package school opens a school's folder and answers what its callers, the
// command line and others, need of it: whether its files are right, the site
// they make, what the next week could be about, what the year lacks, and the
// files of a new school or a new week.
//
// It reads through fs.FS, writes nothing and prints nothing: what is to be
// written comes back as values, what is wrong as diag.Diagnostics. It reads no
// clock; today is an argument.
package school
