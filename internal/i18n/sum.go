package i18n

import (
	"bufio"
	"crypto/sha256"
	"strconv"

	"homebuild/internal/tomlfile"
)

// sumOf names all that a file says to families. What it says to translators alone, in
// remarks and descriptions, is left out: pages are not made anew for them.
func sumOf(doc *tomlfile.File) (sum [sha256.Size]byte) {
	hash := sha256.New()
	w := bufio.NewWriter(hash) // neither of them fails
	write := func(text string) {
		_, _ = w.Write(append(strconv.AppendInt(w.AvailableBuffer(), int64(len(text)), 36), ' '))
		_, _ = w.WriteString(text)
	}
	var in *tomlfile.Value
	for v := range doc.Values() {
		if v.Kind != tomlfile.Text || v.Key == "description" && !inEvent(v) {
			continue
		}
		if v.Parent != in {
			in = v.Parent
			write("[")
			for table := in; table != nil; table = table.Parent {
				write(table.Key)
			}
		}
		write(v.Key)
		write(v.Text)
	}
	_ = w.Flush()
	return [sha256.Size]byte(hash.Sum(nil))
}
