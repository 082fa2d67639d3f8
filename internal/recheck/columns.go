package recheck

import (
	"maps"
	"slices"
)

// row is a line of numbers set out in columns.
type row struct {
	sort   string // number, total or traded
	sign   int
	number amount      // what stands before its places
	places map[int]int // by the middles of the columns
}

// sum is what the places come to.
func (r row) sum() int {
	sum := 0
	for _, n := range r.places {
		sum += n
	}
	return sum
}

// rows reads the lines of numbers in columns. The first of them says where the
// columns are: its first label is its number.
func (f *figure) rows() (rows []row, columns []int) {
	for _, g := range f.all("number", "total", "traded") {
		r := row{g.name, 1, amount{}, map[int]int{}}
		labels := g.labels
		if len(labels) > 0 && labels[0].class == "sign" {
			if labels[0].text == string(minus) {
				r.sign = -1
			}
			labels = labels[1:]
		}
		for i, l := range labels {
			if len(rows) == 0 && i > 0 {
				columns = append(columns, l.x)
			}
			if slices.Contains(columns, l.x) {
				r.places[l.x] = l.amount().n
			} else {
				r.number = l.amount()
			}
		}
		rows = append(rows, r)
	}
	return rows, columns
}

// columnFaults rechecks numbers set out in columns: each is the sum of its
// places, below the rule stands what each column comes to, and a line in which
// something is traded comes to the same as the line before.
func (f *figure) columnFaults() {
	rows, columns := f.rows()
	come := map[int]int{} // what each column comes to
	arrows := 0
	for i, r := range rows {
		before := row{}
		if i > 0 {
			before = rows[i-1]
		}
		switch r.sort {
		case "number":
			for x, n := range r.places {
				come[x] += r.sign * n
			}
		case "traded":
			arrows += f.traded(before, r, columns)
			for x, n := range r.places {
				come[x] += n - before.places[x]
			}
		case "total":
			for x, n := range r.places {
				if n != come[x] {
					f.fault("columns: %d stands below a column of %d", n, come[x])
				}
			}
		}
		if split := r.sum(); r.number.known && split != r.number.n {
			f.fault("columns: %d is split into %d", r.number.n, split)
		}
	}
	drawn := 0
	for _, g := range f.all("traded") {
		drawn += len(g.those("ll", "move"))
	}
	if drawn != arrows {
		f.fault("columns: %d trades are drawn with %d arrows", arrows, drawn)
	}
	if last := rows[len(rows)-1]; last.number.known && last.sort != "number" {
		f.regrouped(last, columns)
	}
}

// traded wants a line to come to the same as the one before it. It counts the
// columns that gave to their neighbor.
func (f *figure) traded(before, after row, columns []int) (trades int) {
	if before.sum() != after.sum() {
		f.fault("columns: %d is traded for %d", before.sum(), after.sum())
	}
	moved := 0
	for _, x := range slices.Backward(columns[1:]) {
		if moved += after.places[x] - before.places[x]; moved != 0 {
			trades++
		}
	}
	if maps.Equal(before.places, after.places) {
		f.fault("columns: nothing is traded in %d", after.sum())
	}
	return trades
}

// regrouped wants an answer to have at most nine of each place but the highest.
func (f *figure) regrouped(r row, columns []int) {
	ten := 10
	for _, x := range slices.Backward(columns[1:]) {
		if r.places[x] >= ten {
			f.fault("columns: %d is not traded, and the answer is %d", r.places[x], r.number.n)
		}
		ten *= 10
	}
}
