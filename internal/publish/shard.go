package publish

import (
	"fmt"
	"hash/fnv"
	"slices"
	"strconv"

	"homebuild/internal/pattern"
)

// Shard is a part of a site that one of several builds makes: part I of N, the
// first being 1. The zero value is the whole. A file's path alone decides which
// part it is in, so that builds on machines that know nothing of each other
// make every file once.
type Shard struct{ I, N int }

// ParseShard reads "3/8" as the third part of eight, and nothing as the whole.
func ParseShard(text string) (Shard, bool) {
	var s Shard
	if text == "" {
		return s, true
	}
	count, _ := fmt.Sscanf(text, "%d/%d", &s.I, &s.N)
	return s, count == 2 && s.N > 0 && s.Valid() && fmt.Sprintf("%d/%d", s.I, s.N) == text
}

// Valid reports whether there is such a part.
func (s Shard) Valid() bool { return s == Shard{} || s.I >= 1 && s.I <= s.N }

func (s Shard) whole() bool { return s.N == 0 }

// Owns reports whether a file is in the part.
func (s Shard) Owns(path string) bool {
	if s.whole() {
		return true
	}
	h := fnv.New32a()
	h.Write([]byte(path))
	return int(h.Sum32()%uint32(s.N)) == s.I-1
}

// String is "3-of-8"; empty for the whole.
func (s Shard) String() string {
	if s.whole() {
		return ""
	}
	return fmt.Sprintf("%d-of-%d", s.I, s.N)
}

// of gives the files of the part.
func (s Shard) of(files []File) []File {
	if s.whole() {
		return files
	}
	return slices.DeleteFunc(slices.Clone(files), func(f File) bool { return !s.Owns(f.Path) })
}

var shardRecord = pattern.Of(`^\.([0-9]+)-of-([0-9]+)\.(manifest|next|seen|from|running|lock)$`)

// parseShardRecord reads what follows a record's name in the name of one of
// its files: ".3-of-8.manifest".
func parseShardRecord(rest string) (s Shard, ending string, ok bool) {
	m := shardRecord().FindStringSubmatch(rest)
	if m == nil {
		return Shard{}, "", false
	}
	s.I, _ = strconv.Atoi(m[1])
	s.N, _ = strconv.Atoi(m[2])
	return s, m[3], s.I >= 1 && s.I <= s.N
}
