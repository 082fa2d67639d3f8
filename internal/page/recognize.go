package page

import "bytes"

// Recognize reports whether a file that begins so is a page of this package, of
// whatever version: its first tags and the policy that lets nothing but its own style
// be used. It takes the first 1,000 bytes.
func Recognize(head []byte) bool {
	return bytes.HasPrefix(head, []byte("<!doctype html> <html lang=")) &&
		bytes.Contains(head, []byte(`content="default-src &#39;none&#39;; style-src &#39;sha256-`)) &&
		bytes.Contains(head, []byte(`base-uri &#39;none&#39;; form-action &#39;none&#39;"`))
}
