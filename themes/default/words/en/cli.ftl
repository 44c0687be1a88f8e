### What the program says on the terminal and in the preview. { $name } in a message is filled in by the program; words in `backticks`
### are typed and stay as they are.

## Why a recipe cannot be made in a size

size-piece-unknown = it is not known what a piece weighs
size-no-flour = there is no flour in it
size-weightless = it weighs nothing
size-no-tin = it names no tin
size-out-of-bounds = that is nothing, or more than 10,000 batches
size-not-in-pieces = it is not made in pieces

## Why there is no question to plan

unclear-no-sessions = it has no sessions
unclear-first-session = its first session is no real time
unclear-session = a session is no real time
unclear-overlap = two sessions overlap
unclear-no-recipe = a recipe is missing
unclear-ring = steps wait for each other in a ring
unclear-own-ring = its steps wait for each other in a ring
unclear-no-time = that is no time on a clock: it does not read, or clocks go forward past it

## What the machine would not do

store-open-content = cannot open the content folder { $path }: { $why }
store-open-theme = cannot open the theme { $path }: { $why }
store-open = cannot open { $path }: { $why }
store-read = cannot read { $path }: { $why }
store-write = cannot write { $path }: { $why }
store-write-in = cannot write in { $path }: { $why }
store-write-to = cannot write to { $path }: { $why }
store-write-beside = cannot write beside the output folder, in { $path }: { $why }
store-lock = cannot lock { $path }: { $why }
store-make = cannot make { $path }: { $why }
store-move = cannot move { $path }: { $why }
store-copy = cannot copy { $path }: { $why }
store-clear = cannot clear { $path }: { $why }
store-entitle = cannot give its rights to { $path }: { $why }
store-use = cannot use { $path }: { $why }
store-publish = cannot publish to { $path }: { $why }
store-serve = cannot serve on { $path }: { $why }
machine-says = { $reason }
machine-not-there = it is not there
machine-no-right = you have no right to
machine-read-only = it is read-only
machine-disk-full = the disk is full
machine-file-for-folder = a file stands where a folder should
machine-folder-for-file = a folder stands where a file should

## Templates

template-fault = { $template }:{ $line }: { $message }

## Where an edition may be published

place-of-instructor = a folder of such a name holds what is the instructor's alone, beside a site; take another name
place-beside-link = it is a link; what stands beside a site must be a folder of its own
place-file = a file stands in its place
place-root = it is the root of a disk; name a folder of its own
place-inputs = the content and the theme lie in it, or it in them; take another
place-home = it is your home folder, or one that holds it; name a folder of its own
place-mount = a disk or a folder from elsewhere is mounted there, and cannot be swapped for a new edition; name a folder inside it
place-strangers = it holds files that were not published; take another, or say --among-others to publish beside them
place-link = it is a link to a place that is not there; make that, or take the link away
place-leads-out = it leads back out of a folder that is not there

## Two at once

place-under-way = another publish to this folder is under way; try again when it is done

## Texts from elsewhere

text-too-long = it has more than 8 MiB
text-not-utf8 = it is not UTF-8 text; open it in an editor and save it as UTF-8

## Making files

place-not-ours = the output folder has something there that was not published before: move it away, or publish to another folder
place-twice = two files would be put in this place, or it is none
file-needed = it needs { $path }, which cannot be read

## Files that cannot be read

theme-link = it is a link to another place; put the file itself there
theme-too-large = the theme is too large
theme-file-too-large = it is larger than 16 MiB
theme-not-utf8 = it is not UTF-8 text: save it as plain text in UTF-8

## Pictures

picture-none = it is no picture

## Pictures on paper

picture-no-size = it has no size

## Typesetting

handout-unset = the handout could not be set

## Drawings as pictures

unpainted = the drawing could not be made into a picture: { $why }
unpainted-tall = it is too tall
unpainted-large = it is too large
unpainted-typeface = the theme has no typeface Asap

## Handouts

picture-unshown = { $name }: { $reason }
handout-no-setting = there is no setting to try
handout-unwritten = the pages could not be written

## The preview

preview-broke-file = the preview broke while it made this file
file-missing = there is no { $path }

## Options

option-unreadable = --{ $option } { $value } does not read; write --{ $option } { $example }

## Changes

changes-in = in { $folder }:
changes-from-to = from { $old } to { $new }
changes-new-recipe = { $title } (new recipe)
changes-recipe-left-out = { $title } (recipe left out)
changes-new-technique = { $title } (new technique)
changes-technique-left-out = { $title } (technique left out)

## Handouts of a class

class-own-size = a class says itself how much each group makes; leave the size out
handout-cannot = the handouts of `{ $name }` cannot be made: { $reason }
handout-no-booklet = a booklet is made of student sheets

## Conversions

convert-without-fan = { $text } = { $heat } without a fan
convert-into-what = say what `{ $text }` is wanted in: g, oz, cup, tbsp, ml
convert-no-unit = `{ $unit }` is no unit; write one such as g, oz, cup, tbsp or ml
convert-unreadable = `{ $text }` does not read; write "2 cups bread flour"
convert-unknown = `{ $name }` is not in the pantry; did you mean `{ $near }`?
convert-answer-density = { $text } = { $amount } { $unit } ({ $density } g/ml)
convert-answer = { $text } = { $amount } { $unit }
convert-heat = { $heat } = { $shown }
convert-with-fan = { $text } = { $heat } with a fan
convert-from-fan = { $text } with a fan = { $heat }
convert-no-scale = `{ $wanted }` is no way to say a temperature; write °C, °F, fan or "no fan"

## Drafts

draft-cannot = { $file }: { $why }
draft-settle-each = Settle each of these in the text, then take its line out.
draft-no-method = the text has no method: write its steps
draft-degrees = `{ $words }` does not say which degrees: write {"{"}190 °C{"}"} or {"{"}375 °F{"}"}
draft-overnight = `overnight` is no time: write `wait: 12 h (8 h to 16 h)` or what is meant
draft-rise = how long it rises is not told: { $sentence }
draft-times = more than one time is told, `{ $time }` is in the ticket: { $sentence }
draft-work-or-wait = `{ $key }: { $time }` may as well be `{ $other }`: { $sentence }
draft-no-oven = no oven temperature is told; find one and write `bake: TEMPERATURE, { $time }` for `wait` and `where`: { $sentence }
draft-cook-time = the baking time is the page's `cookTime`, not in the step: { $sentence }
draft-no-bake-time = no baking time is told: { $sentence }
draft-second = a second `{ $key }: { $value }` is told here: make a step of its own for it
draft-of-step = { $title }: { $doubt }
draft-lost-all = no step names what is in `{ $section }`: all of it is put into `{ $title }`
draft-lost = no step names { $names }: put into `{ $title }`
draft-lost-one = the { $name }
draft-no-title = the text has no title: give it one
draft-no-summary = `summary` is not told: say in a sentence what it is
draft-left-out = `{ $line }` is left out of the formula: { $why }
draft-of-what = it makes { $number } of what? `{ $good }` stands for it
draft-makes-unread = `makes` is not read from `{ $told }`: `1 batch` stands for it; write a number and a word, such as `24 rolls`
draft-makes-untold = it is not told what it makes: `1 batch` stands for it; write such as `24 rolls`
draft-line-wrong = line { $line }: { $said }
draft-no-weight = `{ $line }` stands without a weight, as `{ $text }`: { $why }
draft-turned = `{ $text }` is written as `{ $turned }`: is that what is meant?
draft-why = { $why }. { $help }
draft-ask-proof = `tourier proof` says what to do where it is written so
draft-besides = said apart from the steps: { $line }
draft-longer = it is longer than { $lines } ingredients or { $steps } steps: the rest is left out
draft-others = the page holds { $others } more recipe(s): only the first is drafted
draft-author = the page names as its author: { $author }
draft-no-ingredients = no list of ingredients is found in it; write each ingredient on a line of its own, above the method
draft-not-in-data = it looks like JSON, but there is no schema.org Recipe in it
draft-not-in-page = this page holds no schema.org Recipe data; copy the recipe's own words into a text file and draft from that
draft-there = { $to } is there already, and nothing is written over; name another file with `--to`
draft-stands = a draft stands in { $to }
draft-sure = nothing in it is in doubt; read it through all the same
draft-next = see what else there is to say:  tourier proof{ $content }

## Facts

facts-schema = write --schema={ $name } for the schema of a text, or leave `{ $name }` out for that of the facts

## Handouts on the command line

handout-none-written = no handout is written
cli-error = error: { $message }
handout-waiting = waiting for a publish to { $folder } to end
handout-no-recipe = there is no recipe to print
labels-unreadable = --labels { $size } does not read; write the size of one, --labels "70 x 37 mm"
labels-unfit = labels of { $size } are too small to read or larger than the paper

## Folders and names

cli-stop = tourier: { $message }
cli-no-stop = cannot listen for a stop: { $error }
cli-no-answer = cannot write the answer: { $error }
content-file = { $folder } is a file, not a content folder; name the folder that holds `course.yaml` with `--content FOLDER`
content-none = there is no content folder { $folder }; `tourier start { $folder }` writes a small course there to begin from, `--content { $near }` names another folder
theme-none = there is no theme in { $folder }; `--theme FOLDER` names a folder with the files that differ from the built-in theme
scale-cannot = `{ $name }` cannot be scaled so: { $reason }
way-cannot = `{ $name }` cannot be made so: { $reason }
theme-words = the theme's { $path }:{ $line }: { $message }
none-near = there is no { $kind } `{ $name }`; did you mean `{ $near }`?
none-at-all = there is no { $kind } `{ $name }`: the content folder holds none
none-known = there is no { $kind } `{ $name }`; there are: { $known }

## Orders

order-cannot = `{ $name }` cannot be ordered: { $reason }

## The preview on the terminal

preview-no-stop = cannot listen for Ctrl-C: { $error }
preview-faults = there are faults
preview-port-in-use = port { $port } is in use; leave out --port to have a free one
preview-no-port = cannot serve on port { $port }: { $error }

## Publishing

publish-mended = { $file } had been changed or taken away since the last publish: made again
publish-mended-two = { $file } and { $other } had been changed or taken away since the last publish: made again
publish-mended-more = { $file } and { $count } other files had been changed or taken away since the last publish: made again
publish-kept = a file of others had no place in the new edition; it is kept as { $path }
publish-recounted = this version of tourier counts otherwise than the one that published last: where a number differs and you did not touch its text, that is why
publish-old-stands = { $error }; the last edition stands
publish-new-stands = { $error }; the new edition stands, and the next publish tries again
publish-cannot-make = error: { $path } cannot be made: { $reason }
publish-begins = the course begins at { $folder }/index.html

## Starting

start-not-empty = { $folder } is not empty, and nothing there is written over; name a new folder, as in `tourier start content`
start-stands = a small course stands in { $folder }
start-ignored = a .gitignore here leaves out what publish makes
start-see = see it with:   tourier preview{ $content }
start-make = make it with:  tourier publish{ $content }{ $beside }

## Timetables

plan-none = there is no plan: { $standing }
plan-done-no-step = those have no step `{ $step }`; they have { $known }
plan-done-several = `{ $step }` may be several; say which: { $which }
plan-done-no-group = there are no such groups in this class
plan-done-no-kit = the class does not count so much of `{ $kit }`
plan-now-unreadable = --now { $now } does not read; write --now 18:55
plan-ready-missing = for a recipe say when it shall be ready: write --ready "2027-03-07 09:00"
plan-ready-unreadable = --ready { $ready } does not read; write --ready "2027-03-07 09:00"
plan-cannot = `{ $name }` cannot be planned: { $reason }

## Waiting for a plan

plan-waiting = planning; Ctrl-C stops with the best plan so far
plan-waiting-reasons = no plan was found; looking for the reasons and for what would help; Ctrl-C stops with what is known by then

## What was typed

typed-wrong = { $said }; { $help }
typed-help = `tourier { $name } --help` says what it takes
typed-commands = `tourier --help` lists the commands
typed-command-near = there is no command `{ $word }`; did you mean `tourier { $near }`?
typed-command = there is no command `{ $word }`; there are: { $names }
option-unreadable-in = { $option } { $value } does not read; write { $option } { $example }
typed-option-of-near = `{ $name }` has no option `{ $word }`; did you mean `{ $near }`?
typed-option-near = there is no option `{ $word }`; did you mean `{ $near }`?
typed-option-of = `{ $name }` has no option `{ $word }`; { $help }
typed-option = there is no option `{ $word }`; { $help }
typed-does-not-belong = `{ $word }` does not belong here; { $help }
typed-takes-no-name = `{ $name }` works on the content folder and takes no name; for another folder write `tourier { $name } --content { $word }`
typed-word-too-many = `{ $word }` is one word too many; put the amount in quotes: `tourier { $name } "2 cups bread flour" g`
typed-takes-none = `{ $name }` takes no `{ $word }` there; { $help }
typed-missing = { $what } is missing
typed-needs-option = `{ $name }` needs { $option } here; { $help }
typed-want-folder = a folder to write to
typed-want-recipe-file = a file with a recipe
typed-want-two-folders = two content folders
typed-want-amount = an amount
typed-want-shell = a shell
typed-want-class = a class's file name
typed-want-class-or-recipe = the file name of a class or a recipe
typed-want-recipe-or-class = the file name of a recipe or a class, or `all`
typed-needs-recipe = `{ $name }` needs a recipe's file name: `tourier { $example }`
typed-needs = `{ $name }` needs { $wanted }: `tourier { $example }`
typed-needs-value = { $option } needs a value: { $option } { $example }
typed-needs-choice = { $option } needs one of: { $choice }
typed-needs-a-value = { $option } needs a value
typed-none-near = { $option } { $found } is none that is known; did you mean `{ $near }`?
typed-none = { $option } { $found } is none that is known; write one of: { $choice }
option-unreadable-as = { $option } { $found } does not read; write { $option } { $example }
option-unreadable-plain = { $option } { $found } does not read
typed-twice = { $one } stands there twice; once is enough
typed-not-together = { $one } and { $other } do not go together; leave one of them out

## Counts, results, the preview in the browser

cli-stopped = stopped; { $stands }
kind-language = language
kind-recipe = recipe
kind-class = class
kind-recipe-or-class = recipe or class
kind-class-or-recipe = class or recipe
proof-sound =
    { $count ->
        [one] no faults in { $count } recipe
       *[other] no faults in { $count } recipes
    }
changes-none = nothing differs that a reader would see
changes-of = { $title }
draft-to-settle =
    { $count ->
        [one] one thing is to be settled:
       *[other] { $count } things are to be settled:
    }
preview-at = the course is at { $address } until you press Ctrl-C
preview-over = the preview is over
preview-waits = nothing newer is shown until this is mended
publish-stands = nothing is written, and the last edition stands
publish-unwritten = nothing is written; the last edition stands
publish-progress = files
publish-idle =
    { $count ->
        [one] { $count } file in { $folder }/ is up to date; nothing made
       *[other] { $count } files in { $folder }/ are up to date; nothing made
    }
publish-apart = what is yours alone is in { $folder }/: keep it off the web
publish-of = { $content }:
publish-same-name = { $one } and { $other } are both called { $name }, and each course wants a folder of its own; publish them one by one with `--to DIR`, or give a folder another name
publish-not-begun = it was not begun
publish-all = { $count } courses are published
publish-some = { $count } of { $all } courses published; not published: { $names }
publish-made-nothing = made nothing
publish-made = made { $kinds }
publish-and-kept =
    { $count ->
        [one] { $made }; { $count } was up to date
       *[other] { $made }; { $count } were up to date
    }
publish-and-removed = { $made }; { $count } taken away
publish-pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
publish-handouts =
    { $count ->
        [one] { $count } handout
       *[other] { $count } handouts
    }
publish-drawings =
    { $count ->
        [one] { $count } drawing
       *[other] { $count } drawings
    }
publish-others =
    { $count ->
        [one] { $count } other file
       *[other] { $count } other files
    }
scale-head = { $title }: { $batch }, { $makes }
scale-doughs = in { $count } equal doughs
scale-total = total { $metric } / { $us }
scale-total-hydration = total { $metric } / { $us }, hydration { $percent } %
scale-total-true-hydration = total { $metric } / { $us }, true hydration { $percent } %
scale-each-dough = each dough { $metric } / { $us }
scale-in-us = (US) { $us }
preview-broke-edition = the preview broke while it made this edition
preview-cannot-make = { $name } cannot be made: { $reason }
preview-no-file = there is no such file
preview-no-page = there is no such page
preview-unclear = this does not read
preview-path = this path leads out of the site
preview-method = the preview can only be read
preview-host = the preview answers only as 127.0.0.1 or localhost
preview-long = this is too long
preview-last-good = Not published: the last good edition is shown
preview-cautions =
    { $count ->
        [one] { $count } caution in this edition
       *[other] { $count } cautions in this edition
    }
preview-making = Being made
preview-being-made = The course is being made.
preview-faults-title = Faults
preview-nothing-yet = Not published: there is nothing to show yet

## An evening under way

today-file-unreadable = { $file }:{ $line }: `{ $text }` does not read; write "pairs 1-3: second turn; pair 4 late 10"
today-file-unheard = { $file } at { $at }: { $why }
today-unreadable = `{ $part }` does not read; write "pairs 1-3: second turn; pair 4 late 10"
today-none-to-begin = the class has no plan to begin with; `tourier timetable { $name }` says why
today-group = there is no group { $number }: `{ $name }` has { $groups } groups
today-later-kept = something later is kept already; put an earlier line into the day file itself
today-no-time = { $time } is no real time
today-no-session = --now { $now } is near no session; write a time such as --now 18:55
today-several = --now { $now } may be on several days; say which: --now "{ $day }"
today-no-zone = the course names no `time zone`; say what time it is: --now "{ $example }"
note-kept =
    { $open ->
        [one] Kept in { $file }; { $open } note is not yet taken up
       *[other] Kept in { $file }; { $open } notes are not yet taken up
    }
note-none = Nothing is noted of { $recipe }
note-line = { $number }. { $on } { $text }
note-line-taken = { $number }. { $on } { $text } (taken up { $taken })
note-no-number = of { $recipe } there is no note { $number }; notes there are: { $count }
note-taken-before = note { $number } is taken up already
note-unkept = a note has up to 500 signs; put more into the text of { $recipe } itself
note-no-day = `{ $said }` is no day; write `--on 2027-03-03`
today-by-the-clock = it is { $time }, and no session is near; say when: --now "{ $example }"
