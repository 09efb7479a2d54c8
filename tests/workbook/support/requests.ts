import type { HostObject } from './hostObjects.js';
import { HostFailure } from './typedText.js';

/** A request as the platform's own proxy objects send it. */
export interface RequestBody {
  Actions: RequestAction[];
  ObjectPaths: Record<string, ObjectPath>;
}

interface RequestAction {
  Id: number;
  ActionType: number;
  Name: string;
  ObjectPathId: number;
  ArgumentInfo?: Given;
  QueryInfo?: { Select?: string[] };
}

interface ObjectPath {
  Id: number;
  ObjectPathType: number;
  Name: string;
  ParentObjectPathId?: number;
  ArgumentInfo?: Given;
}

/** Arguments; an object among them is sent as its path. */
interface Given {
  Arguments?: unknown[];
  ReferencedObjectPathIds?: (number | null)[];
}

const actionTypes = { instantiate: 1, query: 2, method: 3, set: 4, trace: 5 };
const pathTypes = { root: 1, method: 3, property: 4, indexer: 5, reference: 6, none: 7 };

export interface ResponseBody {
  Results: { ActionId: number; Value: unknown }[];
  TraceIds: number[];
  Error?: { Code: string; Message: string; Location: string; ActionIndex: number };
}

/** Carries requests out: in order, each action seeing what those before it did; the first failure ends it. */
export class RequestRunner {
  /** Objects a request asked to keep, by the reference it was given. */
  private readonly kept = new Map<string, HostObject>();
  private nextReference = 1;

  constructor(private readonly root: HostObject) {}

  run({ Actions, ObjectPaths }: RequestBody): ResponseBody {
    const response: ResponseBody = { Results: [], TraceIds: [] };
    const found = new Map<number, HostObject | null>();
    const references = new Map<number, string>();
    for (const [index, action] of Actions.entries()) {
      try {
        const Value = this.act(action, ObjectPaths, found, references);
        response.Results.push({ ActionId: action.Id, Value });
        if (action.ActionType === actionTypes.trace) response.TraceIds.push(action.Id);
      } catch (error) {
        if (!(error instanceof HostFailure)) throw error;
        response.Error = {
          Code: error.code,
          Message: 'The text of the host, in the language of the user.',
          Location: action.Name,
          ActionIndex: index,
        };
        break;
      }
    }
    return response;
  }

  private act(
    action: RequestAction,
    paths: Record<string, ObjectPath>,
    found: Map<number, HostObject | null>,
    references: Map<number, string>,
  ): unknown {
    if (action.ActionType === actionTypes.trace) return null;
    const object = this.resolve(action.ObjectPathId, paths, found);
    const given = this.given(action.ArgumentInfo, paths, found);
    switch (action.ActionType) {
      case actionTypes.instantiate: {
        const reference = references.get(action.ObjectPathId);
        return object && { ...idOf(object), ...(reference ? { _ReferenceId: reference } : {}) };
      }
      case actionTypes.query:
        return object && read(object, action.QueryInfo?.Select ?? []);
      case actionTypes.set:
        return needed(object, object?.setters?.[action.Name], action.Name)(given[0] as never);
      case actionTypes.method:
        if (action.Name === '_KeepReference')
          return object && this.keep(object, action.ObjectPathId, references);
        if (action.Name === '_RemoveReference') return this.kept.delete(String(given[0]));
        // A method gives a list as it is, and an object by its path.
        return listOrNull(needed(object, object?.methods?.[action.Name], action.Name)(...given));
      default:
        throw new Error(`the double has no action ${action.ActionType}`);
    }
  }

  private given(
    info: Given | undefined,
    paths: Record<string, ObjectPath>,
    found: Map<number, HostObject | null>,
  ): never[] {
    return (info?.Arguments ?? []).map((argument, at) => {
      const path = info?.ReferencedObjectPathIds?.[at];
      return path ? this.resolve(path, paths, found) : argument;
    }) as never[];
  }

  private keep(object: HostObject, path: number, references: Map<number, string>): null {
    const reference = `reference-${this.nextReference++}`;
    this.kept.set(reference, object);
    references.set(path, reference);
    return null;
  }

  /** How many objects requests have asked to keep and not given back. */
  get keptObjects(): number {
    return this.kept.size;
  }

  private resolve(
    id: number,
    paths: Record<string, ObjectPath>,
    found: Map<number, HostObject | null>,
  ): HostObject | null {
    const known = found.get(id);
    if (known !== undefined) return known;
    const path = paths[id];
    if (!path) throw new Error(`the request has no path ${id}`);
    const object = this.follow(path, paths, found);
    found.set(id, object);
    return object;
  }

  private follow(
    path: ObjectPath,
    paths: Record<string, ObjectPath>,
    found: Map<number, HostObject | null>,
  ): HostObject | null {
    if (path.ObjectPathType === pathTypes.root) return this.root;
    if (path.ObjectPathType === pathTypes.none) return null;
    if (path.ObjectPathType === pathTypes.reference) {
      const kept = this.kept.get(path.Name);
      if (!kept) throw new HostFailure('InvalidReference');
      return kept;
    }
    const parent = this.resolve(path.ParentObjectPathId ?? 0, paths, found);
    const given = this.given(path.ArgumentInfo, paths, found);
    if (path.ObjectPathType === pathTypes.property)
      return needed(parent, parent?.children?.[path.Name], path.Name)();
    if (path.ObjectPathType === pathTypes.indexer)
      return needed(parent, parent?.find, path.Name)(given[0] as never);
    return needed(parent, parent?.methods?.[path.Name], path.Name)(...given) as HostObject | null;
  }
}

/** What is asked of an object that is not there fails as in the host; what the double lacks fails loudly. */
function needed<Member>(object: HostObject | null, member: Member | undefined, name: string): Member {
  if (!object) throw new HostFailure('ItemNotFound');
  if (member === undefined) throw new Error(`the double has no ${name}`);
  return member;
}

const listOrNull = (given: unknown) => (Array.isArray(given) ? (given as unknown[]) : null);

function idOf({ properties }: HostObject): Record<string, unknown> {
  return properties?.['Id'] ? { Id: properties['Id']() } : {};
}

/** The properties selected, with paths such as `protection/protected`; of a collection, those of its items. */
function read(object: HostObject, select: readonly string[]): Record<string, unknown> {
  if (object.items)
    return { _Items: object.items().map((item) => ({ ...idOf(item), ...read(item, select) })) };
  const value: Record<string, unknown> = {};
  for (const path of select) {
    const [first = '', ...rest] = path.split('/');
    const name = first.charAt(0).toUpperCase() + first.slice(1);
    if (rest.length === 0) value[name] = needed(object, object.properties?.[name], name)();
    else {
      const child = needed(object, object.children?.[name], name)();
      value[name] = { ...(value[name] as object), ...(child && read(child, [rest.join('/')])) };
    }
  }
  return value;
}
