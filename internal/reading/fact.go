package reading

// sort is what a sentence tells about an amount.
type sort uint8

const (
	state  sort = iota + 1 // so many are there, or somebody has them
	change                 // so many come or go
	versus                 // so many more or fewer than another
	goal                   // so many are wanted
)

// fact is an amount with what a sentence says about it.
type fact struct {
	quantity
	sort  sort
	class class
	who   string // has it, or does what changes it; "" where nobody is named
	place string
	from  string // whom or what it is taken from
	to    string // who gets it
	than  string // of versus: the other one
	sign  int    // of change: for who, or for what is there
	moves bool   // of change: the counted things themselves come or go
	start bool   // said to be at the beginning
	end   bool   // said to be at the end
	total bool   // said to be all together
	time  string // "monday"

	like    bool   // "3 rayados" after "5 globos rojos": what they are like, or another thing
	belongs string // whose they are, said after them: "il reste 5 billes à Lina"
}

func (f fact) known() bool { return f.numeral >= 0 }

// asks is what the question wants to know.
type asks struct {
	want       want
	who, place string
	than       string // of difference: the other one
	noun, adj  string
	class      class // of the verb that is asked about
	sign       int
	fewer      bool
	end        bool
	total      bool
	goal       int // numeral of the amount that is wanted; -1 for none
}

type want uint8

const (
	wantNone       want = iota
	wantAmount          // how many are there, how many has she
	wantStart           // how many at first
	wantChange          // how many came
	wantDifference      // how many more than
	wantTotal           // how many in all
	wantBoth            // how many in each
	wantMissing         // how many more does she need
)
