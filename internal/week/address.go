package week

import (
	"fmt"
	"net/url"
	"strings"

	"homebuild/internal/diag"
	"homebuild/internal/tomlfile"
)

// maxAddress leaves a code that a phone reads from paper.
const maxAddress = 200

// address is an https address of a place, ending in "/".
func address(s *tomlfile.Section) string {
	typed := s.Word("address")
	if typed == "" {
		return ""
	}
	u, err := url.Parse(typed)
	if err != nil || u.Scheme != "https" || u.Host == "" || u.User != nil || u.RawQuery != "" || u.Fragment != "" ||
		strings.ContainsAny(typed, " \"'<>\\`{}|^") || strings.Contains(typed, "/..") {
		s.AddCoded(diag.Address, typed, "address", fmt.Sprintf("%q is not where a site can live", typed), `write the whole address, with https:// and without spaces, "?" or "#": "https://school.example/families/"`)
		return ""
	}
	if len(typed) > maxAddress {
		s.Add("address", fmt.Sprintf("address has %d letters", len(typed)), fmt.Sprintf("keep it to %d: the code on the paper cannot hold more", maxAddress))
		return ""
	}
	return strings.TrimSuffix(typed, "/") + "/"
}
