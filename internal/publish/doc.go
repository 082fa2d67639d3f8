// Package publish is the only writer to disk. It puts a list of files into a
// folder so that a crash, a kill or a full disk at any moment leaves the old or
// the new version of each file, never half of one, and every link of the site
// resolving:
//
//  1. Every file is rendered, on all processors, and compared with what is on
//     the disk. What differs goes to a temporary name beside its place. An
//     error up to here leaves the old site as it was.
//  2. A journal of what the site will be is laid beside the folder, so that the
//     next run knows its own files however this one ends.
//  3. New files are renamed into place, then changed pages, then changed
//     indexes. A page never leads to a place that is not there yet.
//  4. Files of the last run that are no longer made are removed, but for those
//     that the caller keeps: they stay as they are, and stay ours.
//
// Memory does not grow with the size of the pages: one is held per worker.
//
// The manifest of what is ours is plain text next to the folder, in
// .homebuild/public.manifest for a folder named public, in the form that
// sha256sum reads. A file that is not in it is someone else's: it is never
// touched, only reported. A file of ours that someone edited is copied into
// .homebuild/edited before it is replaced.
//
// Libraries for an atomic write were weighed and left. renameio has nothing for
// Windows. natefinch/atomic opens by path, where os.Root keeps every write inside
// the folder whatever links stand there, and moves each file as soon as it is
// written, where ours wait until all are. Both give temporary files random
// names, so that every kill leaves more of them behind, and sync file by file,
// which is several times slower than the one call for all.
package publish
