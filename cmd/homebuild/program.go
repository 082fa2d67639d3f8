package main

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"io"
	"os"
	"runtime"
	"runtime/debug"
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
