package preview

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"image"
	"image/draw"
	"image/png"

	"slingloft/export"
)

// Format returns PNG as a format of files.
func Format() export.Format {
	return export.Format{
		Name: "png", Ending: ".png",
		SetUp: export.Always(export.Codec{Write: Write, Read: Read, Keeps: export.Size, Tolerance: 1, Faults: faults}),
	}
}

// faults compares pictures pixel by pixel.
func faults(got, due []byte) ([]export.Note, error) {
	if bytes.Equal(got, due) {
		return nil, nil
	}
	a, err := decoded(got)
	if err != nil {
		return nil, err
	}
	b, err := decoded(due)
	if err != nil {
		return nil, err
	}
	if a.Bounds() != b.Bounds() {
		return []export.Note{export.Tell(export.PictureOff, a.Bounds().Size(), b.Bounds().Size())}, nil
	}
	if out := export.LookFaults(chunks(got), chunks(due)); len(out) > 0 {
		return out, nil
	}
	n := 0
	for i := 0; i < len(a.Pix); i += 4 {
		if !bytes.Equal(a.Pix[i:i+4], b.Pix[i:i+4]) {
			n++
		}
	}
	if n == 0 {
		return nil, nil
	}
	return []export.Note{export.Tell(export.PixelsOff, n, len(a.Pix)/4)}, nil
}

// maxCompared bounds the pixels of the pictures that are compared, far more than ours
// have.
const maxCompared = 64 << 20

// decoded returns the pixels of a picture.
func decoded(data []byte) (*image.NRGBA, error) {
	config, err := png.DecodeConfig(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	if config.Width*config.Height > maxCompared {
		return nil, export.Refuse(export.PictureSize, config.Width, config.Height)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	out := image.NewNRGBA(img.Bounds())
	draw.Draw(out, out.Bounds(), img, img.Bounds().Min, draw.Src)
	return out, nil
}

// chunks takes down what a picture holds beside its pixels, such as its size on paper,
// and what stands behind its end (PNG, ISO/IEC 15948, section 5).
func chunks(data []byte) export.Looks {
	const signature, head, sum = 8, 8, 4
	out := export.Looks{}
	for at := signature; at < len(data); {
		rest := data[at:]
		if len(rest) < head+sum {
			out.Add("what stands behind the end", export.Properties{"bytes": fmt.Sprint(len(rest))})
			break
		}
		kind := string(rest[4:head])
		n := int64(binary.BigEndian.Uint32(rest))
		if n > int64(len(rest)-head-sum) {
			out.Add("chunk "+kind, export.Properties{"length": fmt.Sprint(n)})
			break
		}
		if kind != "IDAT" {
			out.Add("chunk "+kind, export.Properties{"content": fmt.Sprintf("%x", rest[head:head+n])})
		}
		at += head + int(n) + sum
		if kind == "IEND" && at < len(data) {
			out.Add("what stands behind the end", export.Properties{"bytes": fmt.Sprint(len(data) - at)})
			break
		}
	}
	return out
}
