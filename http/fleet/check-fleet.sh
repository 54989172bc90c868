#!/bin/sh
# Sends a table of rigs to a PowerCheck service and keeps its table of verdicts.
#
#   check-fleet.sh fleet.csv verdicts.csv [query]      query: such as 'spread=none&remedies=none'
#
# POWERCHECK_URL is the address of the service; http://localhost:5080 when it is not set.
# Ends with 0 only when every rig is answered, with 1 when not all are, and with 2 when none could be asked.

if [ $# -lt 2 ] || [ $# -gt 3 ]; then
    echo "usage: $0 fleet.csv verdicts.csv [query]" >&2
    exit 2
fi

fleet=$1
verdicts=$2
arriving=$verdicts.part
query=${3:+?$3}
tab=$(printf '\t')
rows="^(check|problem)[,;$tab][0-9]+[,;$tab]"
tally="^tally[,;$tab]"

if [ ! -f "$fleet" ] || [ ! -r "$fleet" ]; then
    echo "$fleet cannot be read." >&2
    exit 2
fi

# The line of the fleet in which the last answered rig stands; nothing when none is answered.
last_answered() {
    grep -aE "$rows" "$verdicts" | tail -n 1 | sed "s/^[a-z]*[,;$tab]\([0-9]*\).*/\1/"
}

not_all() {
    last=$(last_answered)
    echo "Not all rigs are answered: $1" >&2
    if [ -n "$last" ]; then
        echo "Rows answered: $(grep -acE "$rows" "$verdicts"); resume at line $((last + 1)) of $fleet." >&2
    else
        echo "Rows answered: 0; send all of $fleet again." >&2
    fi
    exit 1
}

# -T sends the file as it is while the answer arrives, without reading it into memory first.
: > "$arriving" || exit 2
status=$(curl -sS -N -X POST -T "$fleet" -H 'Content-Type: text/csv' -H 'Accept: text/csv' \
    -o "$arriving" -w '%{http_code}' "${POWERCHECK_URL:-http://localhost:5080}/v1/checks/batch$query")
broken=$?

if [ "$status" != 200 ]; then
    echo "The service did not take $fleet (HTTP status $status)." >&2
    grep -aoE '"(detail|message)":"([^"\\]|\\.)*"' "$arriving" >&2 || cat "$arriving" >&2
    rm -f "$arriving"
    exit 2
fi

# A row that broke off in its middle is not answered.
if [ -n "$(tail -c 1 "$arriving")" ]; then
    sed '$d' "$arriving" > "$verdicts" && rm -f "$arriving"
else
    mv "$arriving" "$verdicts"
fi || exit 2

end=$(tail -n 1 "$verdicts" | tr -d '\r' | grep -aE "$tally")
case $end in
'') not_all "the answer broke off (curl ended with $broken)." ;;
*[,\;"$tab"]) ;;
*) not_all "$(echo "$end" | sed "s/^.*[,;$tab]\"*\([a-z-]*: .*[^\"]\)\"*\$/\1/")" ;;
esac

echo "$(grep -acE "$rows" "$verdicts") rigs: $(echo "$end" | grep -aoE '[0-9]+ suitable, .* not checked' \
    || echo "$(grep -acE "^problem[,;$tab]" "$verdicts") not checked")."
