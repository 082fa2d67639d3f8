package school

import (
	"bytes"
	"io/fs"
	"path"
	"slices"
	"strings"

	"homebuild/internal/activity"
	"homebuild/internal/diag"
	"homebuild/internal/i18n"
	"homebuild/internal/picture"
	"homebuild/internal/problem"
	"homebuild/internal/site"
	"homebuild/internal/story"
	"homebuild/internal/strategy"
	"homebuild/internal/textfile"
	"homebuild/internal/tomlfile"
	"homebuild/internal/week"
	example "homebuild/site"
)

// Folders of a school's own, beside its settings and weeks.
const (
	LocalesFolder = "locales" // language files
	ThemesFolder  = "themes"
)

// Sources lists the files and folders of a school that pages are made from.
func Sources() []string {
	return []string{week.SiteFile, week.Folder, LocalesFolder, ThemesFolder}
}

// School is a folder that a site is made from. What is slow to read is kept in
// memory from one call to the next while its files stay the same, so it is not
// for several callers at a time.
type School struct {
	// Today is the day for which the pages are made and dates are looked at:
	// 2026-09-14. Without it every week shows, and no date is far.
	Today string

	name   string
	files  fs.FS
	shared fs.FS  // languages and looks that several schools have; nil for none
	called string // what a person calls the folder of shared

	memory *memory
}

// Open opens a folder. The name is what a person calls it, slash separated;
// problems are told at it. For a folder on the disk give os.Root's file system, which keeps links
// inside.
func Open(name string, files fs.FS) *School {
	return &School{name: name, files: files, memory: newMemory()}
}

// Shared reads the setting that names a folder with languages and looks that several
// schools have, relative to the school's own: empty for none. Share gives it.
func Shared(files fs.FS) (folder string, line int) {
	text, wrong := textfile.Read(files, week.SiteFile)
	if wrong != nil {
		return "", 0 // Load tells of it
	}
	s := tomlfile.Parse(week.SiteFile, text, 1).Section()
	if v := s.Value("shared"); v != nil && v.Kind == tomlfile.Text {
		return v.Text, s.Line("shared")
	}
	return "", 0
}

// Share lets the school use the languages and looks of a folder besides its own, which
// come first. The name is what a person calls it, slash separated.
func (s *School) Share(name string, files fs.FS) { s.called, s.shared = name, files }

// Beside opens another folder, which shares what this one has in memory: a school
// that is being begun, or that of another year.
func (s *School) Beside(files fs.FS) *School {
	return &School{files: files, memory: s.memory}
}

// Example is the example school, which comes with the program.
func Example() *School { return Open("site", example.Files) }

// IsSchool reports whether a folder holds anything of a school's, its settings
// under another name too: week says how to name them.
func IsSchool(files fs.FS) bool {
	if _, err := fs.Lstat(files, week.Folder); err == nil {
		return true
	}
	entries, _ := fs.ReadDir(files, ".") // what cannot be read is none
	return slices.ContainsFunc(entries, func(e fs.DirEntry) bool { return strings.HasPrefix(strings.ToLower(e.Name()), "site.") })
}

// SchoolsIn lists the folders directly in a folder that are schools, but for the example.
func SchoolsIn(files fs.FS) []string {
	ours := must(fs.ReadFile(example.Files, week.SiteFile))
	entries, _ := fs.ReadDir(files, ".") // what cannot be read is not near
	var out []string
	for _, e := range entries {
		if text, err := fs.ReadFile(files, path.Join(e.Name(), week.SiteFile)); err == nil && !bytes.Equal(text, ours) {
			out = append(out, e.Name())
		}
	}
	return out
}

// Load reads everything that the site is made from. With problems there is
// nothing to make it from.
func (s *School) Load() (site.Input, diag.Diagnostics) {
	in, problems := s.read()
	if len(problems) > 0 {
		return site.Input{}, s.Locate(problems)
	}
	return in, nil
}

// Read gives what can be read, and all that is wrong: for showing files while they
// are written.
func (s *School) Read() (site.Input, diag.Diagnostics) {
	in, problems := s.read()
	return in, s.Locate(problems)
}

// read gives what can be read, and the problems as they are in the folder.
func (s *School) read() (site.Input, diag.Diagnostics) {
	in, problems := s.readFiles()
	var found diag.Diagnostics
	if len(in.Site.Languages) > 0 {
		in.Catalog, found = s.catalog(in.Site.Languages...)
		if len(found) == 0 {
			if found = classIsWhole(in); len(found) > 0 {
				in.Catalog = nil
			}
		}
		problems = append(problems, found...)
	}
	in.Theme, found = s.Theme(in.Site.Theme)
	problems = append(problems, found...)
	problems.Sort()
	return in, problems
}

// readFiles reads the settings and the weeks alone.
func (s *School) readFiles() (site.Input, diag.Diagnostics) {
	in := s.memory.shipped()
	var problems diag.Diagnostics
	in.Site, problems = week.Read(s.files, s.allowed(in))
	in.On = s.Today
	problems = append(problems, s.links()...)
	return in, append(problems, in.Site.OddDates(s.Today)...)
}

// links are the folders of languages and looks that are links: passed over, they
// would leave families with other words than the school's own.
func (s *School) links() diag.Diagnostics {
	found := linksIn(s.files)
	if s.shared == nil {
		return found
	}
	for _, linked := range linksIn(s.shared) {
		linked.File = path.Join(s.called, linked.File)
		found = append(found, linked)
	}
	return found
}

func linksIn(files fs.FS) (found diag.Diagnostics) {
	folders := []string{LocalesFolder, ThemesFolder}
	looks, _ := fs.ReadDir(files, ThemesFolder) // no folder, no looks
	for _, look := range looks {
		folders = append(folders, path.Join(ThemesFolder, look.Name()))
	}
	for _, folder := range folders {
		if linked := textfile.Link(files, folder); linked != nil {
			found = append(found, *linked)
		}
	}
	return found
}

// allowed are the words that the school's files may hold.
func (s *School) allowed(in site.Input) week.Allowed {
	return week.Allowed{
		Targets:      each(in.Targets, func(t activity.Target) string { return t.ID }),
		TargetsNamed: namedTargets,
		Strategies:   each(strategy.Names(), strategy.Name.String),
		Pictures:     each(picture.Kinds(), picture.Kind.String),
		Places:       each(in.Places, func(p story.Place) string { return p.ID }),
		WarmUps:      each(in.WarmUps, func(w site.WarmUp) string { return w.ID }),
		Themes:       s.Themes(),
		Kinds:        each(problem.Kinds(), problem.Kind.String),
		Languages:    i18n.Tags(s.Languages()...),
	}
}

// Locate gives problems the path that a person sees from where they are. Files
// that come with the program keep their own.
func (s *School) Locate(problems diag.Diagnostics) diag.Diagnostics {
	out := slices.Clone(problems)
	for i, p := range out {
		out[i].File = s.locate(p.File)
	}
	return out
}

func (s *School) locate(file string) string {
	if s.shared != nil && strings.HasPrefix(file, s.called+"/") {
		return file
	}
	common := strings.HasPrefix(file, LocalesFolder+"/") || strings.HasPrefix(file, ThemesFolder+"/")
	switch {
	case !common || !textfile.IsMissing(s.files, file): // a link is there, wherever it leads
		return path.Join(s.name, file)
	case s.shared != nil && !textfile.IsMissing(s.shared, file):
		return path.Join(s.called, file)
	}
	return file
}

// folder opens a folder of the school's own, if it has one.
func (s *School) folder(name string) (fs.FS, bool) { return folderIn(s.files, name) }

// folders are a folder of the school's own and that of those it shares with others, as
// far as they are there.
func (s *School) folders(name string) []fs.FS {
	var all []fs.FS
	if own, ok := s.folder(name); ok {
		all = append(all, own)
	}
	if s.shared != nil {
		if shared, ok := folderIn(s.shared, name); ok {
			all = append(all, shared)
		}
	}
	return all
}

func folderIn(files fs.FS, name string) (fs.FS, bool) {
	if info, err := fs.Stat(files, name); err != nil || !info.IsDir() {
		return nil, false
	}
	own, err := fs.Sub(files, name)
	return own, err == nil
}

// must unwraps what comes with the program: an error in it is a bug, which the
// tests of its room find.
func must[T any](value T, err error) T {
	if err != nil {
		panic(err)
	}
	return value
}

// each gives the words of a list.
func each[T any](list []T, word func(T) string) []string {
	words := make([]string, len(list))
	for i, v := range list {
		words[i] = word(v)
	}
	return words
}
