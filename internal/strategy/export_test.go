package strategy

import (
	"fmt"

	"homebuild/internal/problem"
)

// Work works c out by n alone. The error says that n does not fit.
func Work(n Name, c problem.Calculation) (Way, error) {
	if !Fits(n, c) {
		return Way{}, fmt.Errorf("%v does not fit %v", n, c)
	}
	return work(n, c), nil
}
