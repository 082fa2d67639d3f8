package publish

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
)

// origin names what the parts of a site are made from. Parts of different origins are
// not the parts of one site.
type origin struct {
	program string // as in Options
	site    string // a sum over the paths of all files and what each is made from
}

func (o origin) String() string { return o.program + " " + o.site }

// known reports whether there is an origin to compare.
func (o origin) known() bool { return o.program != "" }

// originOf is that of a list of files.
func originOf(program string, files []File) origin {
	sum := sha256.New()
	for _, f := range files {
		fmt.Fprintf(sum, "%s %s\n", f.Path, f.Key)
	}
	return origin{program, fmt.Sprintf("%x", sum.Sum(nil))}
}

// origins are those of a part: the one that it is made from now, and then those that
// it has left since all parts had one. The others may still be where it comes from.
type origins []origin

// from reports what keeps the part from standing beside another: nothing where that
// one has the same origin, or one that this part has left.
func (o origins) from(part Shard, other origin) error {
	if slices.Contains(o, other) {
		return nil
	}
	made, same := "was made from other files, or for another day", "the same files, and the same day with --on"
	if other.program != o[0].program {
		made, same = "another program made", "the same program"
	}
	return &Error{
		Text: fmt.Sprintf("this part does not go with part %d of %d, which %s", part.I, part.N, made),
		Hint: fmt.Sprintf("give all parts %s, and build again, part %d first; or build the whole once, or into another folder", same, part.I),
	}
}

// originsFile ends the name of the file that holds the origins of a part.
const originsFile = "from"

func (st *state) readOrigins(s Shard) (all origins) {
	data, err := fs.ReadFile(st.root.FS(), fileOf(st.name, s, originsFile))
	if err != nil {
		return nil // a part that an earlier version made has none
	}
	for line := range bytes.Lines(data) {
		program, site, ok := strings.Cut(strings.TrimSpace(string(line)), " ")
		if ok {
			all = append(all, origin{program, site})
		}
	}
	return all
}

// fits refuses to make a part beside parts of another origin, where that is known.
func (st *state) fits(now origin) error {
	if !now.known() {
		return nil
	}
	_, err := st.beside(st.leaving(now))
	return err
}

// claim says that the part is made from an origin, for builds of other parts at the
// same time: the last moment to refuse.
func (st *state) claim(now origin) error {
	if !now.known() {
		return nil
	}
	before := st.readOrigins(st.shard)
	mine := st.leaving(now)
	if err := st.writeOrigins(mine); err != nil {
		return err
	}
	agreed, err := st.beside(mine)
	if err != nil {
		return errors.Join(err, st.writeOrigins(before))
	}
	if agreed {
		return st.writeOrigins(mine[:1])
	}
	return nil
}

// leaving are the origins of the part when it is made from a new one.
func (st *state) leaving(now origin) origins {
	left := slices.DeleteFunc(st.readOrigins(st.shard), func(o origin) bool { return o == now })
	return append(origins{now}, left...)
}

// beside looks at the other parts: whether all that are there have the same origin.
func (st *state) beside(mine origins) (agreed bool, err error) {
	agreed = true
	for i := range st.shard.N {
		part := Shard{i + 1, st.shard.N}
		theirs := st.readOrigins(part)
		if part == st.shard || len(theirs) == 0 {
			continue
		}
		if err := mine.from(part, theirs[0]); err != nil {
			return false, err
		}
		agreed = agreed && theirs[0] == mine[0]
	}
	return agreed, nil
}

func (st *state) writeOrigins(all origins) error {
	name := st.file(originsFile)
	if len(all) == 0 {
		return st.remove(name)
	}
	return st.write(name, func(w *bufio.Writer) {
		for _, o := range all {
			_, _ = w.WriteString(o.String() + "\n") // w keeps its first error
		}
	})
}
