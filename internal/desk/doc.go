// Package desk is the teacher's way in: a week made on a page, without a file, a
// command or an install. It answers what the page asks, [Calls], from the files
// of a desk, which are those of a school's folder.
//
// What is proposed is in pencil, and follows what stands above it; what she
// chose is in ink, and stays. A file keeps the two apart: a setting that the plan
// proposed is named in proposed = ["focus"], a story that it proposed has
// proposed = true, and what is not written is in pencil anyway.
//
// Values come in and values go out. The room reads no clock and no disk, and
// knows nothing of browsers or networks; the page keeps the files and the way
// back.
package desk
