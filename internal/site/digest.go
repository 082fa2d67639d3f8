package site

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"reflect"
	"slices"
	"strconv"
)

// digest names the values of what it is given: equal values have equal names,
// on every machine, and other values have others. It looks into everything,
// unexported fields too, so that a field that is added later cannot be
// forgotten. What has no value to name, a function or a channel, is a bug of
// the caller and panics.
func digest(values ...any) string {
	d := digester{sha256.New(), nil}
	for i := range values {
		d.value(reflect.ValueOf(&values[i]).Elem()) // with its type
	}
	return hex.EncodeToString(d.flush().Sum(nil)[:16])
}

type digester struct {
	hash   hash.Hash
	buffer []byte
}

func (d *digester) flush() hash.Hash {
	d.hash.Write(d.buffer)
	d.buffer = d.buffer[:0]
	return d.hash
}

// number writes a number and its end, so that two numbers are never read as
// one.
func (d *digester) number(n int64) {
	d.buffer = append(strconv.AppendInt(d.buffer, n, 36), ' ')
	if len(d.buffer) > 4096 {
		d.flush()
	}
}

func (d *digester) text(s string) {
	d.number(int64(len(s)))
	d.buffer = append(d.buffer, s...)
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
		d.mapped(v)
	case reflect.Pointer, reflect.Interface:
		d.pointed(v)
	default:
		panic(fmt.Sprintf("site: a %v has no value to name", v.Type()))
	}
}

// mapped goes through a map in the order of its keys, which are words or
// numbers.
func (d *digester) mapped(v reflect.Value) {
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

// pointed tells apart nothing, and what sort of thing is pointed at.
func (d *digester) pointed(v reflect.Value) {
	if v.IsNil() {
		d.text("nothing")
		return
	}
	d.text(v.Elem().Type().String())
	d.value(v.Elem())
}
