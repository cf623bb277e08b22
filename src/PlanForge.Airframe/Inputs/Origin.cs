using System.Collections.Immutable;
using PlanForge.Airframe.Format;

namespace PlanForge.Airframe.Inputs;

/// <summary>
/// Where in the description a record's values came from, and the log that wants to know when they are read. Any two are equal: records
/// that differ only in their origin describe the same thing.
/// </summary>
/// <remarks>
/// A record of the description passes each value through its origin as it gives it out: <c>get => Origin.Read(field, Key)</c>.
/// Without a log, and on records made by hand, that does nothing.
/// </remarks>
internal readonly struct Origin : IEquatable<Origin>
{
    private readonly State? _state;

    /// <summary>The origin of a record made from a mapping.</summary>
    public Origin(Place? place) => _state = place is null ? null : new(place, null, false, [], []);

    private Origin(State state) => _state = state;

    /// <summary>The origin of a record made from a single value: whatever is read of it is that value.</summary>
    public static Origin OfValue(Place? place) => place is null ? default : new(new State(place, null, true, [], []));

    /// <summary>The origin of a record that stands nowhere in the description: its values come from others' alone.</summary>
    public static Origin OfOthers() => new(new State(null, null, false, [], []));

    /// <summary>The same, with a log.</summary>
    public Origin Watched(InputLog log) => _state is null ? this : new(_state with { Log = log });

    /// <summary>The same, where what stands behind a key of this record was also computed from another value.</summary>
    /// <param name="key">The key of this record.</param>
    /// <param name="other">The record that holds the other value.</param>
    /// <param name="otherKey">The other value's key.</param>
    public Origin From(Key key, Origin other, Key otherKey)
    {
        if (_state is null || other._state is not { } from)
        {
            return this;
        }

        var links = _state.Links.ToBuilder();
        if (from.OwnOf(otherKey) is { } own)
        {
            links.Add(new(key, own, from.IsValue ? null : otherKey));
        }

        links.AddRange(other.LinksOf(otherKey, key));
        return new(_state with { Links = links.ToImmutable() });
    }

    /// <summary>The same, where what stands behind a key of this record is another's value alone: what stood there before does not matter.</summary>
    /// <param name="key">The key of this record.</param>
    /// <param name="other">The record that holds the other value.</param>
    /// <param name="otherKey">The other value's key.</param>
    public Origin Instead(Key key, Origin other, Key otherKey) => _state is null
        ? this
        : WithoutLinks(key, _state.Replaced.Contains(key) ? _state.Replaced : _state.Replaced.Add(key)).From(key, other, otherKey);

    /// <summary>The same, where what stands behind a key of this record is computed from nothing but its own value.</summary>
    public Origin Alone(Key key) => _state is null ? this : WithoutLinks(key, _state.Replaced);

    /// <summary>The same, where what stands behind a key of this record was also made from files.</summary>
    public Origin FromFiles(Key key, IEnumerable<string> files) => _state is null
        ? this
        : new(_state with { Links = _state.Links.AddRange(files.Select(file => new Link(key, Place.File(file), null))) });

    /// <summary>Notes that what stands behind a key is read.</summary>
    public T Read<T>(T value, Key key)
    {
        if (_state is { Log: not null } state)
        {
            state.Note(key, InputKind.Content);
        }

        return value;
    }

    /// <summary>Notes that what stands behind either of two keys is read.</summary>
    public T Read<T>(T value, Key key, Key orKey)
    {
        Read(value, key);
        return Read(value, orKey);
    }

    /// <summary>Notes that a value deeper in the mapping is read.</summary>
    public T ReadWithin<T>(T value, Key mapping, Key key)
    {
        if (_state is { Log: { } log, Place: { } place } state)
        {
            log.Note(place, key, InputKind.Content, mapping);
            state.NoteLinks(key, log);
        }

        return value;
    }

    /// <summary>Notes that all of the record's place is read, and what a key of it was computed from besides.</summary>
    public T ReadAll<T>(T value, Key key)
    {
        if (_state is { Log: { } log, Place: { } place } state)
        {
            log.Note(place, null, InputKind.Content);
            state.NoteLinks(key, log);
        }

        return value;
    }

    /// <summary>Notes that a list's membership is read; its entries say themselves when they are.</summary>
    public ImmutableArray<T> Members<T>(ImmutableArray<T> list, Key key)
    {
        if (_state is { Log: not null } state)
        {
            state.Note(key, InputKind.Members);
        }

        return list;
    }

    /// <summary>Notes that the presence of a mapping that may be left out is read; the mapping says itself what is read of it.</summary>
    public T Given<T>(T mapping, Key key)
    {
        if (_state is { Log: not null } state)
        {
            state.Note(key, InputKind.Presence);
        }

        return mapping;
    }

    /// <summary>The same for a mapping within another.</summary>
    public T GivenWithin<T>(T mapping, Key outer, Key key)
    {
        if (_state is { Log: { } log, Place: { } place })
        {
            log.Note(place, key, InputKind.Presence, outer);
        }

        return mapping;
    }

    /// <inheritdoc/>
    public bool Equals(Origin other) => true;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is Origin;

    /// <inheritdoc/>
    public override int GetHashCode() => 0;

    private Origin WithoutLinks(Key key, ImmutableArray<Key> replaced) =>
        new(_state! with { Links = _state.Links.RemoveAll(link => link.Key == key), Replaced = replaced });

    private IEnumerable<Link> LinksOf(Key key, Key asKey) =>
        _state!.Links.Where(link => link.Key == key).Select(link => link with { Key = asKey });

    private sealed record State(Place? Place, InputLog? Log, bool IsValue, ImmutableArray<Link> Links, ImmutableArray<Key> Replaced)
    {
        public Place? OwnOf(Key key) => Replaced.Contains(key) ? null : Place;

        public void Note(Key key, InputKind kind)
        {
            if (OwnOf(key) is { } own)
            {
                Log!.Note(own, IsValue ? null : key, kind);
            }

            NoteLinks(key, Log!);
        }

        public void NoteLinks(Key key, InputLog log)
        {
            foreach (var link in Links)
            {
                if (link.Key == key)
                {
                    log.Note(link.Place, link.OtherKey, InputKind.Content);
                }
            }
        }
    }

    private sealed record Link(Key Key, Place Place, Key? OtherKey);
}
