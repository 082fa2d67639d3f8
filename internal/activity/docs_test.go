package activity

import "flag"

var _ = flag.Bool("update", false, "write the tables of docs/mathematics.md again")

// mathematics is where the figures stand for people.
const mathematics = "../../docs/mathematics.md"
