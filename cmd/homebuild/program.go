package main

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"os"
	"runtime"
	"runtime/debug"

	"homebuild/internal/publish"
)

// version is set when a release is linked: -ldflags "-X main.version=1.2.0".
var version = ""

// versionLine says which program this is.
func versionLine() string {
	v := version
	info, ok := debug.ReadBuildInfo()
	if v == "" && ok {
		v = info.Main.Version
	}
	if v == "" {
		v = "(devel)"
	}
	return fmt.Sprintf("homebuild %s, made with %s for %s/%s", v, runtime.Version(), runtime.GOOS, runtime.GOARCH)
}

// programSum names the bytes of the running program, pages, pictures and
// languages that come with it included: a page that another program made is
// made anew. Empty when the program cannot read itself; then every page is.
func programSum() string {
	name, err := os.Executable()
	if err != nil {
		return ""
	}
	file, err := os.Open(name)
	if err != nil {
		return ""
	}
	defer file.Close()
	sum := sha256.New()
	if _, err := io.Copy(sum, file); err != nil {
		return ""
	}
	return hex.EncodeToString(sum.Sum(nil))
}

// readShard reads what part of a build is asked for: "3/8". Nothing is the
// whole.
func readShard(typed string) (publish.Shard, error) {
	if typed == "" {
		return publish.Shard{}, nil
	}
	var s publish.Shard
	count, _ := fmt.Sscanf(typed, "%d/%d", &s.I, &s.N)
	if count == 2 && s.N > 0 && s.Valid() && fmt.Sprintf("%d/%d", s.I, s.N) == typed {
		return s, nil
	}
	return s, wrongUse(fmt.Sprintf("--shard cannot be %q", typed), "write the part and the number of parts, such as 3/8 for the third of eight")
}
