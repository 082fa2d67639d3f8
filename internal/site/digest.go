package site

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"reflect"
	"slices"
	"strconv"
)

// digest names the values of what it is given: equal values have equal names,
// on every machine, and other values have others. It looks into everything,
// unexported fields too, so that a field that is added later cannot be
// forgotten; what is pointed at and has a sum of its own is named by that. What
// has no value to name, a function or a channel, is a bug of the caller and
// panics.
func digest(values ...any) string {
	var d digester
	for i := range values {
		d.value(reflect.ValueOf(&values[i]).Elem()) // with its type
	}
	sum := sha256.Sum256(d.written)
	return hex.EncodeToString(sum[:16])
}

type digester struct{ written []byte }

// number writes a number and its end, so that two numbers are never read as
// one.
func (d *digester) number(n int64) {
	d.written = append(strconv.AppendInt(d.written, n, 36), ' ')
}

func (d *digester) text(s string) {
	d.number(int64(len(s)))
	d.written = append(d.written, s...)
}

func (d *digester) value(v reflect.Value) {
	switch v.Kind() {
	case reflect.Invalid:
		d.text("nothing")
	case reflect.Bool:
		d.text(strconv.FormatBool(v.Bool()))
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		d.number(v.Int())
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		d.text(strconv.FormatUint(v.Uint(), 36))
	case reflect.String:
		d.text(v.String())
	case reflect.Slice, reflect.Array:
		d.number(int64(v.Len()))
		for i := range v.Len() {
			d.value(v.Index(i))
		}
	case reflect.Struct:
		for i := range v.NumField() {
			d.value(v.Field(i))
		}
	case reflect.Map:
		d.entries(v)
	case reflect.Pointer, reflect.Interface:
		d.pointed(v)
	default:
		panic(fmt.Sprintf("site: a %v has no value to name", v.Type()))
	}
}

// entries goes through a map in the order of its keys, which are words or
// numbers.
func (d *digester) entries(v reflect.Value) {
	keys := v.MapKeys()
	slices.SortFunc(keys, func(a, b reflect.Value) int {
		if a.CanInt() {
			return cmp.Compare(a.Int(), b.Int())
		}
		return cmp.Compare(a.String(), b.String())
	})
	d.number(int64(len(keys)))
	for _, k := range keys {
		d.value(k)
		d.value(v.MapIndex(k))
	}
}

// summed has a name of its own for all that it holds.
type summed interface{ Sum() string }

// pointed tells apart nothing, and what sort of thing is pointed at.
func (d *digester) pointed(v reflect.Value) {
	if v.IsNil() {
		d.text("nothing")
		return
	}
	d.text(v.Elem().Type().String())
	if v.Kind() == reflect.Pointer && v.Type().Implements(reflect.TypeFor[summed]()) {
		d.text(v.Interface().(summed).Sum())
		return
	}
	d.value(v.Elem())
}
