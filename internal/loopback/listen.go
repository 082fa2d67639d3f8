package loopback

import (
	"fmt"
	"net"
	"strconv"
)

// Port is what is tried first when nobody asks for another.
const Port = 8017

// tried is how many ports after a taken one are looked at.
const tried = 50

// InUse says that something else has the port that was asked for.
type InUse struct {
	Port int
	Free int // the next port that is free; 0 when none near is
}

func (e *InUse) Error() string { return fmt.Sprintf("port %d is in use", e.Port) }

// Listen opens a port on this computer alone. Port 0 takes the usual one, or
// the next that is free. A port that is asked for and taken is an *InUse.
func Listen(port int) (net.Listener, error) {
	asked := port
	if asked == 0 {
		port = Port
	}
	listener, err := local(port)
	if err == nil {
		return listener, nil
	}
	for next := port + 1; next <= min(port+tried, 65535); next++ {
		listener, free := local(next)
		if free != nil {
			continue
		}
		if asked == 0 {
			return listener, nil
		}
		listener.Close()
		return nil, &InUse{Port: asked, Free: next}
	}
	return nil, &InUse{Port: port}
}

func local(port int) (net.Listener, error) {
	return net.Listen("tcp4", net.JoinHostPort("127.0.0.1", strconv.Itoa(port)))
}
