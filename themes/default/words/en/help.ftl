### What `--help` says of commands, options and values. The key of a message is made of their names: `help-COMMAND`, `help-COMMAND-OPTION`, and
### `-VALUE` after it; `any` stands for every command. Words in `backticks` are typed and stay as they are.

## Headings

help-head-usage = Usage
help-head-commands = Commands
help-head-command = Command
help-head-arguments = Arguments
help-head-options = Options
help-head-values = Possible values
help-head-values-short = possible values
help-head-default = default
help-head-examples =
    { $count ->
        [one] Example
       *[other] Examples
    }
help-head-name = Name
help-head-description = Description
help-head-version = Version

## Every command

help-tourier = Turns a folder of hand-baking recipes in plain text into a checked course site and printed handouts
help-any-content = The content folder. Named several times, several courses are published: each to a folder of its own name below the output folder
help-any-theme = A theme's folder, laid over the default theme
help-any-quiet = Show no progress and no closing line
help-any-color = When to colour messages
help-any-color-auto = On a terminal, unless NO_COLOR is set
help-any-color-always = Always
help-any-color-never = Never
help-any-help = Print help: `-h` a summary, `--help` all of it
help-any-version = Print version

## What several commands take

help-any-recipe = The recipe's file name
help-any-class = The class's file name
help-any-name = The class's or the recipe's file name; several recipes, `crescents,chocolate-batons`, are made together, a dough that they share once
help-any-as = The form of the answer
help-any-as-text = For people
help-any-as-json = For programs
help-any-as-csv = For a spreadsheet
help-any-as-ics = A calendar file
help-any-as-svg = A chart
help-any-units-metric = Metric
help-any-units-us = US customary
help-any-pieces = So many pieces: `24`
help-any-piece-weight = Pieces of this weight: `60g`; as many as written, or as `--pieces` says
help-any-batches = So many batches: `1.5`
help-any-flour = This much flour in all: `1kg`
help-any-total = This much in all: `2kg`
help-any-tin = For another tin: `23 cm round`
help-any-with = In one of its ways, or several: `"oat drink"`, `"without walnuts"`

## `start`

help-start = Write a small course to begin from, into a new folder
help-start-dir = The folder to write the course into; a new one, or one with nothing in it

## `publish`

help-publish = Check everything, then write the site and every handout; only what changed is made
help-publish-to = The output folder; `output` where not said. Of several courses the folder that theirs stand in
help-publish-among-others = Publish to the folder named by `--to` though files of others lie in it and it was never published to; they stay as they are
help-publish-thorough = Read every published file through to see that it is whole, not only its size and time
help-publish-shared = A folder of made files that machines and courses share: what is in it is not made again, and what is made is put into it where that may be written to

## `preview`

help-preview = Serve the site on this machine only, and make it anew when a file is saved
help-preview-port = The port to serve on; a free one where not said
help-preview-desk = Begin at the desk: the texts written in the browser, beside the page that they make
help-preview-to-read = Only to read: no desk, and nothing is written
help-preview-room = Let phones on the same local network read the pages and mark what happens on a class's evening, by a code to scan; at ADDRESS where this machine has several
help-preview-no-browser = Do not open the browser

## `editor`

help-editor = Speak with your editor while you write: faults, completion, what a word is (Language Server Protocol on standard input and output)

## `handout`

help-handout = Print one handout as PDF, or those of the whole course or of a class as one
help-handout-recipe = The file name of a recipe; several, `crescents,chocolate-batons`, in one, a dough that they share once; `all` for every recipe of the course behind a cover; the file name of a class for its whole set: student sheets, and bench cards for each group with its own amounts
help-handout-kind = The kind of handout: `student` where not said, for a class `student` and `bench`
help-handout-kind-student = To take home
help-handout-kind-bench = One page to stand at the station
help-handout-kind-large-print = The student sheet in 18 pt
help-handout-units = The units that come first; the course's own where not said
help-handout-paper = The paper; the course's own where not said
help-handout-paper-a4 = A4
help-handout-paper-letter = US Letter
help-handout-language = The language, of those that the course is to be had in; its first where not said
help-handout-level = What is said to some of those who bake, which pages fold away, printed too; for a class as its file says where not said
help-handout-level-beginners = Who make it for the first time
help-handout-level-practised = Who have done it before
help-handout-booklet = Two pages on each side of the paper, to be folded in half
help-handout-labels = Labels for what is weighed out, on sheets of labels of this size: `70 x 37 mm`
help-handout-to = The folder to write to

## `proof`

help-proof = Check everything and write nothing

## `facts`

help-facts = Print everything worked out about a recipe, or several made together, as JSON
help-facts-recipe = The recipe's file name; several, `crescents,chocolate-batons`, are made together, a dough that they share once
help-facts-schema = Print the JSON Schema of the facts, or of a text that you write
help-facts-schema-facts = What `facts` prints
help-facts-schema-together = What it prints of several recipes
help-facts-schema-course = course.yaml
help-facts-schema-pantry = pantry.yaml
help-facts-schema-glossary = glossary.yaml
help-facts-schema-class = A class
help-facts-schema-recipe = A recipe's head
help-facts-schema-technique = A technique's head
help-facts-schema-translation = The head of a text in a further language

## `scale`

help-scale = Show a recipe's formula, or of several made together, scaled, in both unit systems
help-scale-recipe = The recipe's file name; several, `crescents,chocolate-batons`, are made together, a dough that they share once

## `timetable`

help-timetable = Plan a class, or a recipe at home backwards from when it shall be ready
help-timetable-ready = For a recipe: when it shall be ready, `2027-03-07 09:00`
help-timetable-group = With `--as ics`: the calendar of the group of this number; the instructor's without it

## `today`

help-today = An evening under way: keep what happened, and plan the rest anew
help-today-said = What happened: `pairs 1-3: second turn; pair 4 late 10; pair 2: brush skipped`, `all: first turn at 18:50`, `pair 1: bake from 19:40`, `all: nothing yet`, `pair 3 gone`, `oven 2 out`, `oven 2 back`; `take back` takes back the line before. The beginning of a step's name will do. Groups that are not named have kept to the plan
help-today-now = The time now, `18:55`; this machine's where it is not said
help-today-try = Only see what would become of it: nothing is kept

## `note`

help-note = Note something of a recipe at the bench, for its next edition; show its notes
help-note-said = What to note; `taken up 2` where the recipe has the second note now, `taken up` where it has all. Nothing shows the notes
help-note-on = The day of the note, `2027-03-03`; this machine's today where it is not said

## `order`

help-order = The order list and the weigh-out of a class, or of recipes made together

## `changes`

help-changes = Say what differs between two editions of the content, in a reader's words
help-changes-old = The content folder of the old edition
help-changes-new = The content folder of the new edition
help-changes-units = The units to say it in; the new edition's own where not said

## `draft`

help-draft = Make a draft of a recipe that exists: plain text pasted from anywhere, a saved web page with schema.org data, or that data alone. Nothing is fetched
help-draft-file = The file with the recipe; `-` for what is typed or pasted in
help-draft-to = The file to write, in place of one in the content folder named after the recipe; `-` to show the draft only

## `convert`

help-convert = Convert one amount, naming the density used
help-convert-amount = What to convert: `2 cups bread flour`, `190 °C`
help-convert-unit = The unit wanted: `g`, `oz`, `cup`, `tbsp`, `ml`; for an oven `°C`, `°F`, `fan` or `no fan`. An oven written with its fan, `fan 170 °C`, needs none

## `completions`

help-completions = Print what a shell needs to complete commands and options
help-completions-shell = The shell

## `manual`

help-manual = Print the manual page, for `man`

## `help`

help-help = Print this help, or that of a command
help-help-command = The command
