package estimate

// NearestTen rounds as schools do: ones 5 to 9 go up, 0 to 4 go down. Half
// always goes up (3.NBT.A.1 of CCSS-M 2010, from memory; not the half-to-even
// of statistics).
func NearestTen(n int) int { return (n + 5) / 10 * 10 }

// NearestHundred rounds in the same way: 50 and more go up.
func NearestHundred(n int) int { return (n + 50) / 100 * 100 }

// NearestFive is the five or ten that n is closest to; no whole number is
// halfway.
func NearestFive(n int) int { return (n + 2) / 5 * 5 }

// FrontEnd keeps what each number has in the first place of the largest one
// and drops the rest: 256 and 78 are 200 and 0.
func FrontEnd(numbers ...int) []int {
	unit := 1
	for _, n := range numbers {
		for n/unit >= 10 {
			unit *= 10
		}
	}
	cut := make([]int, len(numbers))
	for i, n := range numbers {
		cut[i] = n / unit * unit
	}
	return cut
}
