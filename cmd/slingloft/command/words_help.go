package command

// Help is what the help of a command says.
type Help struct {
	Line    string // for the list of commands
	Long    string // what it does; lists of names fill it in
	Example string
	Flags   map[string]string // by the flags' names; lists of names fill them in
}

// help returns the help of a command; what shop and reporting share goes for it too.
func (w Words) help(c command) Help {
	h := w.Help[c.name]
	flags := map[string]string{}
	for _, some := range []map[string]string{w.Shared, h.Flags} {
		for name, text := range some {
			flags[name] = text
		}
	}
	h.Flags = flags
	return h
}

func englishHelp() map[string]Help {
	return map[string]Help{
		"start": {
			Line: "write a starter design, or one proposed for a sleeper",
			Long: `Writes a complete design with the few values that you have to decide, each with its
meaning, ready to be changed; with --all, every key there is. It never overwrites a
file that exists already; the name - stands for standard output.

With --stature and --mass it proposes a bed for that sleeper: bars, span, drop, side
depth, tails and legs, each with its reason and the source of the body measure behind
it, written into the file. Take it as it is, or change any part of it.`,
			Example: "  slingloft start my.toml\n  slingloft start my.toml --units in\n" +
				"  slingloft start my.toml --stature \"172 cm\" --mass \"80 kg\" --sleeps side\n",
			Flags: map[string]string{
				"units":       "units to write the design in: mm or in",
				"all":         "write every key, those left out behind #",
				"stature":     `the sleeper's height, such as "172 cm" or "5 ft 8 in"`,
				"mass":        `the sleeper's mass, such as "80 kg" or "176 lb"`,
				"shoulders":   "shoulder breadth (default: estimated)",
				"sleeps":      "how the sleeper lies: back or side (default back)",
				"cloth-width": "usable width of the roll; the body is joined where it is wider",
			},
		},
		"figure": {
			Line: "print every figure: shape, forces, cords, pieces, seams, offsets",
			Long: `Prints every figure of a design: the hung shape with its forces, the flat body,
cord cut lengths term by term with their marks, the seam walk, offsets tables, the
pieces and the lay. With --json the same as one document for other programs, in
mm, N and radians.

With --vary one or two keys of the design take several values in turn, and one table
shows what each buys: level, stability, hang angles, loads, the least margin, length,
mass, cloth. The file stays as it is.`,
			Example: "  slingloft figure\n  slingloft figure my.toml --json > my.json\n" +
				"  slingloft figure my.toml --vary \"bed.head_bar = 850 mm, 900 mm, 950 mm\" --chart bars.html\n",
			Flags: map[string]string{
				"materials": "print the materials list alone, as CSV",
				"vary":      `a key with its values, such as "bed.span = 1450 mm, 1500 mm"; may be repeated once`,
				"csv":       "print the table of --vary as CSV",
				"chart":     "write the curves of --vary into this file too, ending in .html or .pdf",
				"force":     "replace that file if it exists already",
			},
		},
		"hang": {
			Line: "hang the cut as cloth and say how level it lies and what it pulls",
			Long: `Hangs the cut as cloth, in a simulation that shares no formula with figure: with its
cords, bars and hang lines, under the sleeper as a chain of rounded bodies. It says how
level the bed lies, what cords, lines and bars carry beside the figures, how the cloth
is drawn along its threads and in shear, and where it hangs slack. A quick look takes
some seconds, --exact up to half a minute; Ctrl-C ends it. With level = "hung" under
[bed] the cut was made level in that simulation already.`,
			Example: "  slingloft hang\n  slingloft hang my.toml --exact\n  slingloft hang my.toml --sitting\n  slingloft hang my.toml " +
				"--json > cloth.json\n",
			Flags: map[string]string{
				"exact":   "on a finer mesh, and to a closer balance",
				"round":   "lay the round section of the design into it in place of a body",
				"sitting": "the sleeper sits up at mid-bay",
				"guest":   "name of a guest of the design who lies in it in place of the sleeper",
			},
		},
		"cut": {
			Line: "write the files to cut from: cloth lay and template sheets",
			Long: `Lays the cloth pieces on the roll and the stiff templates on their sheets and
writes one file for each sheet and format: all of them, each whole, or none.
A file that exists already is replaced only if it was written for the same design
values and has not been changed since, or with --force.

Several designs, or --copies of one, are laid on one roll: each piece is lettered
with the number of its bed, and templates that beds share are written once. They
have to use the same cloth and the same sheets.

A lay has at most 5,000 pieces, a drawing that is added 100 outlines.

Formats: %s.`,
			Example: "  slingloft cut\n  slingloft cut my.toml --out my-files --as svg,dxf\n" +
				"  slingloft cut my.toml --scale 1:5 --as svg\n  slingloft cut my.toml --as pdf --paper a4 --measured 99.6x100.2\n" +
				"  slingloft cut my.toml --copies 2\n  slingloft cut mine.toml yours.toml\n",
			Flags: map[string]string{
				"out":      "folder to write into; made if it is not there",
				"as":       "formats to write, with commas between",
				"scale":    "drawing scale, such as 1:5 (default: the design's, else 1:1)",
				"copies":   "how many beds of each design to lay on one roll",
				"lay-time": "how long to search for a better lay, such as 60s",
				"force":    "replace files that exist already",
			},
		},
		"prove": {
			Line: "read written files back and say whether they agree with the design",
			Long: `Reads every file that cut wrote into a folder, measures its sheet, check bars and
lines, and says file by file whether it still agrees with the design: a file that
was rescaled, edited by hand, or left over from another run or design does not.
It also checks all else that a machine or an eye acts on: order, power, feed,
depth, the tool on or off, pens, colours, layers and what they hide, titles,
scripts. A file whose bytes have changed since it was written is reported even
where it still agrees. Files of another scale or machine in one folder are
refused as a whole; --as proves one format alone.

The design, the scale, the machine and all else that is not named here are those that
the files were cut with, and so is the lay: the folder's .slingloft keeps them. The
places of the pieces are checked anew.

The exit status is 5 where something does not agree, 1 where a file cannot be read.`,
			Example: "  slingloft prove slingloft-out\n  slingloft prove my.toml my-files\n  slingloft prove my.toml my-files --as " +
				"dxf --scale 1:5\n",
			Flags: map[string]string{
				"as":    "formats to prove, with commas between (default: all that exist)",
				"scale": "drawing scale, such as 1:5 (default: that of the files)",
			},
		},
		"calibrate": {
			Line: "write what to try a new machine with: long bars and a kerf comb",
			Long: `Writes what to plot or cut first on a machine. The calibration sheet has bars nearly as
long as the bed, both ways, and square diagonals: measure them, and give what they
measure as calibration_x and calibration_y under [machine]; every file is then
corrected. On a small bed the bars are shorter; on a roll (a machine for cloth, a pen
or knife of which one of width and height is left out) they are some two metres along
the feed. Where the tool only cuts, a rectangle is cut out, and its edges are the bars.

The kerf comb is cut from the board itself: the board's edge fits snugly into the slot
whose number is the width of the cut; give it as kerf. That number is off by as much as
the board's thickness is, so there is a comb only with --thickness, as callipers show
it, whatever the board is called.

Neither is corrected or cut beside its lines, whatever the settings say.`,
			Example: "  slingloft calibrate --as svg,pdf\n  slingloft calibrate my.toml --machine laser.toml --as gcode --thickness \"2.94 mm\"\n",
			Flags: map[string]string{
				"thickness": `what the board for the comb measures, such as "2.94 mm" or "0.116 in"`,
				"out":       "folder to write into; made if it is not there",
				"as":        "formats to write, with commas between: %s",
				"force":     "replace files that exist already",
			},
		},
		"sheet": {
			Line: "write the build sheet: drawings, tables and the order of work",
			Long: `Writes the build sheet as one self-contained web page, or as a PDF file, depending on
the ending of the name. It comes in parts: shop, a few pages for the table with what
to cut and the steps to tick off; steps, the same in full with pictures of pieces and
templates; hanging, how to hang it, prove it and set it right; appendix, the glossary,
offsets, loads and margins, seam walk and sources. A file that exists already is
replaced only if it was written for the same design values and has not been changed
since, or with --force.

Of designs, or --copies of one, that cut lays together each has a sheet of its own, the
second in NAME-2.html and so on, with the lay and the list of materials of all.

The sheet is written even where a required margin is not met; it then says so first.`,
			Example: "  slingloft sheet\n  slingloft sheet my.toml --out my.html\n" +
				"  slingloft sheet my.toml --out table.pdf --pages shop --paper letter\n" +
				"  slingloft sheet mine.toml yours.toml\n",
			Flags: map[string]string{
				"out":    "file to write, ending in .html or .pdf; its folder is made if it is not there",
				"paper":  "paper of a PDF file: a4 or letter",
				"cloth":  "also show how the cut hangs as cloth, which takes some seconds",
				"copies": "how many beds of each design are laid on one roll",
				"pages":  "parts to write, with commas between: shop, steps, hanging, appendix; or all",
				"force":  "replace a file that exists already",
			},
		},
		"watch": {
			Line: "serve a local page to make a design on",
			Long: `Serves a page on this machine with a field for every key of the design, the hammock
in space and the build sheet, which follow what is entered. A fault stands beside its
field, with a value to use instead. Save writes the design file: values change in
place, and all else stays as it is. A file that does not exist yet begins with a few
questions. What others save into the file is shown; where both have changed it nothing
is lost. Every file that the other commands write is one click away. Ctrl-C ends it.

The address that is printed holds a secret word: open it as it is. The page is served
to this machine only; under another --addr it shows the design but does not save.`,
			Example: "  slingloft watch\n  slingloft watch my.toml\n  slingloft watch my.toml --addr 127.0.0.1:0\n",
			Flags: map[string]string{
				"addr": "address and port to serve the page at; port 0 takes a free one",
			},
		},
		"complete": {
			Line: "print the completion script of bash, fish or zsh",
			Long: `Prints a script by which a shell completes commands, options and file names. It
is made from the same definitions that the program reads its options by.`,
			Example: "  slingloft complete bash > ~/.local/share/bash-completion/completions/slingloft\n",
		},
		"manual": {
			Line: "print the manual page of the program or of a command",
			Long: `Prints a manual page in the macros of man(7), made from the same definitions as this
help: of the program, or of the command that is named.`,
			Example: "  slingloft manual > slingloft.1\n  slingloft manual cut > slingloft-cut.1\n",
		},
	}
}

// englishShared are flags that several commands have.
func englishShared() map[string]string {
	return map[string]string{
		"machine": "file with the settings of a machine, in place of the design's [machine]",
		"shelf":   "file with the cords, cloths, bars, threads and hooks that the design takes by name, in place of its own shelf",
		"paper":   "paper that PDF is divided onto: %s",
		"measured": "what the 100 mm bars measured on a plot, such as 99.6x100.2, or the 4 in bars in inches, such as 3.98x4.01: " +
			"every file is corrected",
		"only":      "cloth, templates, or sheets and pieces by their names, with commas between",
		"add":       "SVG or DXF file with an outline of your own to lay on the cloth; may be repeated",
		"add-board": "the same for the sheets of the templates",
		"json":      "print one JSON document instead of text",
		"schema":    "print the JSON Schema of that document",
	}
}

// ManualWords are the heads of a manual page, and what stands under those that are the
// same on every page.
type ManualWords struct {
	Line                                                             string // what the program is, for the first page
	Name, Synopsis, Description, Commands, Options, Examples, Status string
	Cautions, Also                                                   string
	Statuses                                                         [Disagree + 1]string
	Caution                                                          string
	Default                                                          string // of an option
	Called, CalledWith                                               string // what follows the program's name, and a command's
}

func englishManual() ManualWords {
	return ManualWords{
		Line: "from one design file to everything a bridge hammock is cut and sewn from",
		Name: "Name", Synopsis: "Synopsis", Description: "Description", Commands: "Commands", Options: "Options",
		Examples: "Examples", Status: "Exit status", Cautions: "Cautions", Also: "See also",
		Statuses: [...]string{
			Done: "done", Failed: "cannot read or write", Usage: "usage or design at fault; nothing was written",
			Unmet: "a required margin is not met", SeamOff: "a seam is out of tolerance",
			Disagree: "written files do not agree with the design",
		},
		Caution: "People hang in what is made from these files. Read the cautions in the build sheet and the README before you cut.",
		Default: " (default %s)", Called: "COMMAND [DESIGN] [options]", CalledWith: "[options]",
	}
}
