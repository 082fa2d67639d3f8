// Package tiny is code for the tests of command mutate. What becomes of each change of
// it is known.
package tiny

import "cmp"

// Sum has a type parameter that stands for numbers.
func Sum[T ~int | ~float64](numbers ...T) (total T) {
	for _, n := range numbers {
		total = total + n
	}
	return total
}

// Join adds texts.
func Join(a, b string) string {
	return a + ", " + b
}

// Both has a type parameter that may stand for a text.
func Both[T int | string](a, b T) T {
	return a + b
}

// Larger of two that are equal is either.
func Larger[T cmp.Ordered](a, b T) T {
	if a > b {
		return a
	}
	return b
}

// Below adds the numbers up to n: counted up, they never end.
func Below(n int) (total int) {
	for i := n; i > 0; i-- {
		total = total + i
	}
	return total
}

// Opposite is asked for 0 alone.
func Opposite(n float64) float64 { return -n }

// Same has conditions inside a condition.
func Same(a, b, c, d int) bool {
	return (a < b) == (c < d)
}

// Even has two signs of one line.
func Even(n int) bool { return n%2 == 0 }

// Left is written on two lines.
func Left(all, gone int) int {
	return all - // what is gone
		gone
}

// Fixed has signs in whose place no function can stand.
func Fixed() (length, number int64) {
	const wide = 3 * 2
	var list [2 + 1]int
	var share int64 = 60 / 2
	counts := map[int64]int{}
	counts[share-twice(wide)]++
	counts[share]++
	length = int64(len(list)) - 1
	length++
	return length, int64(counts[18]) + int64(counts[share])
}

func twice(n int64) int64 { return n * 2 }

// Unused is run by no test.
func Unused(n int) int { return n + 1 }
