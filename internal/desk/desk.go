package desk

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"runtime/debug"
	"testing/fstest"

	"homebuild/internal/activity"
	"homebuild/internal/i18n"
	"homebuild/internal/school"
)

// Desk answers the page's calls, one at a time.
type Desk struct {
	folder  Folder // where the files are kept; nil where the page keeps them
	today   string
	words   string         // the tag of the language of the desk's own words
	say     *i18n.Language // that language, once it was needed
	files   fstest.MapFS
	school  *school.School
	planner activity.Planner // knows the weeks that were planned last
	known   []reading        // the last ones, the newest first
	planned []*planned       // the last ones worked out, the newest first
}

// Folder keeps the files of a desk elsewhere than in the page.
type Folder interface {
	Name() string // as a person calls it
	Read() (Files, error)
	// Write lays files down. The error is ErrChanged where one of them is not as
	// it was before, and then nothing is written.
	Write(changes, before Changes) error
}

// ErrChanged says that another program changed a file.
var ErrChanged = errors.New("another program changed a file")

// New is a desk on which nothing lies. Without a folder the page keeps the files.
func New(folder Folder) *Desk {
	d := &Desk{folder: folder, words: i18n.SourceTag, files: fstest.MapFS{}}
	d.school = school.Open("", d.files)
	return d
}

// wrong is an error that is for the person at the desk to mend.
type wrong []Finding

func (w wrong) Error() string {
	if len(w) == 0 {
		return "nothing is wrong"
	}
	return w[0].Text
}

// calls are what can be asked, by name. A new one is a method of [Calls] and a line
// here.
var calls = map[string]func(*Desk, json.RawMessage) (any, error){
	"open":     call((*Desk).Open),
	"put":      call((*Desk).Put),
	"year":     call((*Desk).Year),
	"targets":  call((*Desk).Targets),
	"begin":    call((*Desk).Begin),
	"week":     call((*Desk).Week),
	"choices":  call((*Desk).Choices),
	"set":      call((*Desk).Set),
	"story":    call((*Desk).Story),
	"steps":    call((*Desk).Steps),
	"kinds":    call((*Desk).Kinds),
	"calendar": call((*Desk).Calendar),
	"settings": call((*Desk).Settings),
	"page":     call((*Desk).Page),
	"check":    call((*Desk).Check),
	"own":      call((*Desk).Own),
	"use":      call((*Desk).Use),
	"send":     call((*Desk).Send),
	"site":     call((*Desk).Site),
	"copy":     call((*Desk).Copy),
	"openCopy": call((*Desk).OpenCopy),
	"lastYear": call((*Desk).LastYear),
}

// call reads what a call takes.
func call[Args, Value any](answer func(*Desk, Args) (Value, error)) func(*Desk, json.RawMessage) (any, error) {
	return func(d *Desk, data json.RawMessage) (any, error) {
		var args Args
		if len(data) > 0 {
			if err := json.Unmarshal(data, &args); err != nil {
				return nil, err
			}
		}
		return answer(d, args)
	}
}

// Answer answers a [Request] with a [Reply], both in JSON. It never panics: what is
// a bug of ours becomes a fault, and the desk is then to be made anew.
func (d *Desk) Answer(request []byte) []byte {
	reply := d.reply(request)
	filled(reflect.ValueOf(&reply.Value).Elem())
	data, err := json.Marshal(reply)
	if err != nil {
		data, _ = json.Marshal(Reply{ID: reply.ID, Fault: err.Error()})
	}
	return data
}

func (d *Desk) reply(data []byte) (reply Reply) {
	var request struct {
		ID   int             `json:"id"`
		Call string          `json:"call"`
		Args json.RawMessage `json:"args"`
	}
	if err := json.Unmarshal(data, &request); err != nil {
		return Reply{Fault: err.Error()}
	}
	reply.ID = request.ID
	defer func() {
		if cause := recover(); cause != nil {
			reply = Reply{ID: request.ID, Fault: fmt.Sprintf("%s: %v\n%s", request.Call, cause, debug.Stack())}
		}
	}()
	answer, known := calls[request.Call]
	if !known {
		return Reply{ID: request.ID, Fault: fmt.Sprintf("there is no call %.40q", request.Call)}
	}
	value, err := answer(d, request.Args)
	switch err := err.(type) {
	case nil:
		reply.Value = value
	case wrong:
		reply.Wrong = err
	default:
		reply.Fault = err.Error()
	}
	return reply
}

// filled makes lists of nothing empty ones, so that the page never meets a null
// where its types say a list.
func filled(v reflect.Value) {
	switch v.Kind() {
	case reflect.Interface, reflect.Pointer:
		if v.IsNil() {
			return
		}
		if inner := v.Elem(); v.Kind() == reflect.Interface {
			whole := reflect.New(inner.Type()).Elem()
			whole.Set(inner)
			filled(whole)
			v.Set(whole)
		} else {
			filled(inner)
		}
	case reflect.Struct:
		for i := range v.NumField() {
			filled(v.Field(i))
		}
	case reflect.Slice:
		if v.IsNil() {
			v.Set(reflect.MakeSlice(v.Type(), 0, 0))
		}
		if v.Type().Elem().Kind() != reflect.Uint8 {
			for i := range v.Len() {
				filled(v.Index(i))
			}
		}
	case reflect.Map:
		if v.IsNil() {
			v.Set(reflect.MakeMap(v.Type()))
		}
	}
}
